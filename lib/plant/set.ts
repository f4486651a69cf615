import { z } from 'zod';
import { classification } from './classification';
import { motor } from './motor';
import { AUXILIARIES } from './motor-words';
import { fromZeroTo, group, isAbove, oneOf, THOUGH_REFUSED, text, told, upTo, yesNo } from './told';

export const FOOTINGS = ['foot', 'face', 'foot-and-face'] as const;

const seat = {
  shaftHeightMm: upTo(1_000),
  holesAcrossMm: upTo(2_000),
  holesAlongMm: upTo(2_000),
  boltMm: upTo(100),
  holeToShaftEndMm: upTo(2_000),
  /** The face the gear or pump offers: "FF165", "182TC", "FT130" ... */
  face: told(text(40)),
};

const coupling = {
  type: oneOf(['coupling', 'close-coupled', 'gear', 'belt']),
  input: oneOf(['hub', 'quill', 'pump-shaft']),
  /** Motor rpm over pump rpm. */
  ratio: upTo(500),
  efficiencyPct: upTo(100),
  hub: group({
    boreMm: upTo(300),
    keyWidthMm: upTo(100),
    bushed: yesNo(),
    reboreToMm: upTo(300),
    sleeve: yesNo(),
    replaceable: yesNo(),
    lengthMm: upTo(600),
  }),
  quill: group({ depthMm: upTo(600), bushing: yesNo() }),
  gapMm: fromZeroTo(500),
  gapMinMm: fromZeroTo(500),
  gapMaxMm: fromZeroTo(500),
  maxTorqueNm: upTo(1_000_000),
  /** The motor's sheave. */
  sheave: group({ pitchDiameterMm: upTo(3_000), changeable: yesNo() }),
  takeUpMm: fromZeroTo(1_000),
};

const base = {
  shimLimitMm: fromZeroTo(100),
  shimsPresentMm: fromZeroTo(100),
  slotting: yesNo(),
  transitionBase: yesNo(),
  maxLengthMm: upTo(10_000),
  maxMassKg: upTo(50_000),
  cableEntry: oneOf(['left', 'right', 'top']),
};

const drive = z.strictObject({
  ratedA: upTo(5_000),
  overloadPct: told(z.number().min(100).max(400)),
  outputVolts: upTo(15_000),
  baseHertz: upTo(400),
  minHertz: upTo(400),
  maxHertz: upTo(400),
  cableM: fromZeroTo(2_000),
  filter: yesNo(),
});

/** Drive-fed: phases, volts and hertz are the drive's input. */
const supply = {
  phases: told(z.literal([1, 3])),
  volts: upTo(15_000),
  hertz: upTo(400),
  measuredVolts: upTo(15_000),
  unbalancePct: fromZeroTo(100),
  start: oneOf(['direct', 'star-delta', 'part-winding', 'soft', 'drive']),
  directAllowed: yesNo(),
  /** Current limit in per cent of full-load amps. */
  softStartLimitPct: told(z.number().min(100).max(1_000)),
  overloadMinA: upTo(5_000),
  overloadMaxA: upTo(5_000),
  overloadIn: oneOf(['line', 'phase']),
  contactorA: upTo(5_000),
  cableA: upTo(5_000),
  instantaneousTripA: upTo(100_000),
  capacitorKvar: fromZeroTo(10_000),
  drive: told(drive),
};

const load = {
  kind: oneOf(['constant-torque', 'quadratic']),
  /** Greatest continuous power at the pump shaft, at `atPumpRpm`. */
  shaftKw: upTo(15_000),
  atPumpRpm: upTo(24_000),
  maxPumpRpm: upTo(24_000),
  flowTolerancePct: fromZeroTo(100),
  /** Per cent of the load torque at shaftKw. */
  breakawayPct: fromZeroTo(1_000),
  staticHeadPct: fromZeroTo(100),
};

const surroundings = {
  ip: motor.shape.ip,
  washdown: yesNo(),
  ambientC: motor.shape.ambientC,
  altitudeM: told(z.number().min(-500).max(6_000)),
  /** Null is "unclassified, said by a person"; absent is "not known". */
  classification: classification.nullable().optional(),
};

/** The failed motor is known by its plate: its plant number may be untold, and is then named so. */
const failedMotor = motor.extend({
  id: text(60)
    .nullish()
    .transform((id) => id ?? '(number not told)'),
});

/** One installed pump-motor set: how it holds, couples, feeds, loads and surrounds its motor. */
export const set = z
  .strictObject({
    tag: text(60),
    mounting: z.enum(FOOTINGS),
    shaftDirection: oneOf(['horizontal', 'down', 'up']),
    rotation: oneOf(['cw', 'ccw', 'either']),
    failed: told(failedMotor),
    seat: group(seat),
    coupling: group(coupling),
    base: group(base),
    // Fed by a drive of which nothing is known: there is one, and each of its figures is not known.
    supply: group(supply).transform((told) =>
      told.start === 'drive' && told.drive === null ? { ...told, drive: drive.parse({}) } : told,
    ),
    load: group(load),
    surroundings: group(surroundings),
    needs: z
      .array(z.enum(AUXILIARIES))
      .max(AUXILIARIES.length)
      .nullish()
      .transform((needs) => needs ?? []),
  })
  .superRefine(({ supply, coupling }, ctx) => {
    const refuse = (path: string[], input: unknown, message: string) =>
      ctx.addIssue({ code: 'custom', path, input, message });
    const { drive, overloadMinA, overloadMaxA } = (supply ?? {}) as Partial<typeof supply>;
    if (isAbove(overloadMinA, overloadMaxA))
      refuse(['supply', 'overloadMinA'], overloadMinA, `must not be above overloadMaxA (${overloadMaxA})`);
    if (isAbove(drive?.minHertz, drive?.maxHertz))
      refuse(['supply', 'drive', 'minHertz'], drive?.minHertz, `must not be above maxHertz (${drive?.maxHertz})`);
    const { gapMinMm, gapMaxMm } = (coupling ?? {}) as Partial<typeof coupling>;
    if (isAbove(gapMinMm, gapMaxMm))
      refuse(['coupling', 'gapMinMm'], gapMinMm, `must not be above gapMaxMm (${gapMaxMm})`);
  }, THOUGH_REFUSED);

export type PumpSet = z.output<typeof set>;
export type PumpSetInput = z.input<typeof set>;
