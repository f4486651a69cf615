import type { PumpSet } from '@/lib/plant/set';
import { drivenLoadOf, failedRowOf } from './driven-load';
import type { RatingRow } from './rating-row';

/** Full-load speed against the speed asked, both at the motor's shaft, where the operating point cannot be solved. */
export interface NominalSpeed {
  haveRpm: number | null;
  needRpm: number | null;
  /** With a slip unknown on either side: the least change that is possible. */
  changePct: number | null;
  isSlipKnown: boolean;
}

/** The greatest full-load slip of an ordinary cage motor: NEMA MG 10 Table 2-1, designs B and C (read in two texts). */
const SLIP_UP_TO = 0.05;

export function nominalSpeedOf(set: PumpSet, row: RatingRow): NominalSpeed {
  const need = needOf(set, row);
  const have = { rpm: row.rpm ?? row.synchronousRpm, isExact: row.rpm !== null }; // a motor in step has an exact one
  const isSlipKnown = have.isExact && need.isExact;
  const speeds = { haveRpm: have.rpm, needRpm: need.rpm };
  if (have.rpm === null || need.rpm === null) return { ...speeds, changePct: null, isSlipKnown };
  const slowest = (have.isExact ? have.rpm : have.rpm * (1 - SLIP_UP_TO)) / need.rpm - 1;
  const fastest = have.rpm / (need.isExact ? need.rpm : need.rpm * (1 - SLIP_UP_TO)) - 1;
  return { ...speeds, changePct: 100 * (slowest > 0 ? slowest : Math.min(0, fastest)), isSlipKnown };
}

/** On a drive both motors at base frequency, since the setting stays; else the speed asked of the motor. */
function needOf(set: PumpSet, row: RatingRow): { rpm: number | null; isExact: boolean } {
  const failed = failedRowOf(set);
  const asked = drivenLoadOf(set).motorRpm;
  if (set.supply.start !== 'drive' && asked !== null) return { rpm: asked, isExact: true };
  const failedRpm = failed?.rpm ?? null;
  if (failedRpm !== null) return { rpm: failedRpm, isExact: true };
  // Its poles still tell where it ran, if not its slip.
  const field = failed?.synchronousRpm ?? null;
  if (field !== null) return { rpm: field, isExact: false };
  // On a drive any base speed can be brought to the speed asked.
  return { rpm: asked === null ? null : (row.rpm ?? row.synchronousRpm), isExact: true };
}
