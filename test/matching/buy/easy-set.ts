import type { MotorInput } from '@/lib/plant/motor';
import { type PumpSet, type PumpSetInput, set } from '@/lib/plant/set';

const FAILED: MotorInput = {
  id: 'M-1',
  kind: 'cage',
  frame: '184T',
  phases: 3,
  poles: 4,
  design: 'B',
  ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }],
  enclosure: 'TEFC',
  ip: 'IP55',
};

/** An easy set, but for what differs. */
export const easySet = (differs: Partial<PumpSetInput> = {}, failed: Partial<MotorInput> | null = {}): PumpSet =>
  set.parse({
    tag: 'P-1',
    mounting: 'foot',
    shaftDirection: 'horizontal',
    failed: failed === null ? null : { ...FAILED, ...failed },
    coupling: { type: 'coupling' },
    supply: { phases: 3, volts: 480, hertz: 60, start: 'direct' },
    load: { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 1750, breakawayPct: 100 },
    surroundings: { ip: 'IP55', classification: null, ambientC: 40 },
    ...differs,
  });
