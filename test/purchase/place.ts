import { buyable } from '@/lib/matching/buy/buyable';
import type { MotorInput } from '@/lib/plant/motor';
import { type PumpSet, type PumpSetInput, set } from '@/lib/plant/set';
import type { DemandGroup } from '@/lib/purchase/demand';

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
export const place = (differs: Partial<PumpSetInput> = {}, failed: Partial<MotorInput> | null = {}): PumpSet =>
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

/** The first motor that could be bought for it. */
export function firstToBuy(one: PumpSet) {
  const [asked] = buyable(one);
  if (asked === undefined) throw new Error('nothing could be bought');
  return asked;
}

/** Each line's value, or another part of it, by the line's id. */
export const byId = (groups: readonly DemandGroup[]) =>
  Object.fromEntries(groups.flatMap(({ demands }) => demands.map((demand) => [demand.id, demand])));
