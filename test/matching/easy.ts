import { type Motor, type MotorInput, motor as motorSchema } from '@/lib/plant/motor';
import { type PumpSet, type PumpSetInput, set as setSchema } from '@/lib/plant/set';

/** A 5 hp 4-pole 184T motor, 460 V 60 Hz, with all that a good plate tells. Invented. */
const easyMotor = {
  id: 'M-1',
  kind: 'cage',
  frame: '184T',
  phases: 3,
  poles: 4,
  leads: 9,
  ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, pf: 0.82, efficiencyPct: 89.5 }],
  serviceFactor: 1.15,
  design: 'B',
  codeLetter: 'J',
  enclosure: 'TEFC',
  ip: 'IP55',
  insulation: 'F',
  ambientC: 40,
  duty: 'S1',
  driveDuty: 'none',
  terminalBox: 'left',
  rotation: 'either',
  washdown: 'none',
  has: [],
  massKg: 41,
  lengthMm: 390,
} satisfies MotorInput;

/** A foot-mounted, coupled, direct-on-line rotary pump whose failed motor is the easy motor. Invented. */
const easySet = {
  tag: 'P-1',
  mounting: 'foot',
  shaftDirection: 'horizontal',
  rotation: 'either',
  failed: { ...easyMotor, id: 'M-0' },
  coupling: { type: 'coupling', ratio: 1, hub: { lengthMm: 60, replaceable: true } },
  base: { shimLimitMm: 6, shimsPresentMm: 1.5, slotting: false, transitionBase: false },
  supply: {
    phases: 3,
    volts: 460,
    hertz: 60,
    start: 'direct',
    overloadMinA: 5,
    overloadMaxA: 9,
    contactorA: 18,
    cableA: 20,
  },
  load: { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 1750, flowTolerancePct: 5, breakawayPct: 110 },
  surroundings: { ip: 'IP55', washdown: false, ambientC: 40, altitudeM: 200, classification: null },
} satisfies PumpSetInput;

type Part<T> = { [K in keyof T]?: T[K] | undefined };

/** The easy motor with what differs; a group such as `measured` is given whole. */
export const motor = (differs: Part<MotorInput> = {}): Motor => motorSchema.parse({ ...easyMotor, ...differs });

/** The easy set with what differs; the keys of a group are merged into the easy group. */
export function set(differs: { [K in keyof PumpSetInput]?: Part<PumpSetInput[K]> | null | undefined } = {}): PumpSet {
  const merged: Record<string, unknown> = { ...easySet };
  for (const [key, value] of Object.entries(differs)) {
    const easy = merged[key];
    const isGroup = (v: unknown): v is object => typeof v === 'object' && v !== null && !Array.isArray(v);
    merged[key] = isGroup(value) && isGroup(easy) ? { ...easy, ...value } : value;
  }
  return setSchema.parse(merged);
}
