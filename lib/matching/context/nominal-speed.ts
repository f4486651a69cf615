import type { PumpSet } from '@/lib/plant/set';
import { drivenLoadOf, failedRowOf } from './driven-load';
import type { RatingRow } from './rating-row';

/** Full-load speed against the speed asked, both at the motor's shaft, where the operating point cannot be solved. */
export interface NominalSpeed {
  haveRpm: number | null;
  needRpm: number | null;
  changePct: number | null;
  isSlipKnown: boolean;
}

/** The greatest full-load slip of an ordinary cage motor: NEMA MG 10 Table 2-1, designs B and C (read in two texts). */
const SLIP_UP_TO = 0.05;

export function nominalSpeedOf(set: PumpSet, row: RatingRow): NominalSpeed {
  const haveRpm = row.rpm ?? row.synchronousRpm;
  const isSlipKnown = row.rpm !== null && row.slipRpm !== null;
  const needRpm = needOf(set, row);
  if (haveRpm === null || needRpm === null) return { haveRpm, needRpm, changePct: null, isSlipKnown };
  const change = haveRpm / needRpm - 1;
  // With the slip unknown the speed lies somewhere in a band: what is told is how far off its nearer end is.
  const low = isSlipKnown ? change : (haveRpm * (1 - SLIP_UP_TO)) / needRpm - 1;
  const nearest = change < 0 ? change : Math.max(0, low);
  return { haveRpm, needRpm, changePct: (isSlipKnown ? change : nearest) * 100, isSlipKnown };
}

/** On a drive both motors at base frequency, since the setting stays; else the speed asked of the motor. */
function needOf(set: PumpSet, row: RatingRow): number | null {
  if (set.supply.start !== 'drive') return drivenLoadOf(set).motorRpm;
  return failedRowOf(set)?.rpm ?? (drivenLoadOf(set).motorRpm === null ? null : row.rpm);
}
