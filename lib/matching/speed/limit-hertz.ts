import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { drivenLoadOf } from '../context/driven-load';
import { hertzFor, motorLineOf, rpmUnderLoad, torqueAt } from '../context/motor-line';
import type { RatingRow } from '../context/rating-row';

/**
 * The frequency the drive's upper limit must come down to, because at the present one pump or motor would run faster
 * than it may. Null: it need not, or what it may be is not told.
 */
export function limitHertz(set: PumpSet, candidate: Motor, row: RatingRow): number | null {
  const maxHertz = set.supply.start === 'drive' ? (set.supply.drive?.maxHertz ?? null) : null;
  const allowed = allowedRpm(set, candidate);
  if (maxHertz === null || allowed === null) return null;

  const load = drivenLoadOf(set);
  const line = motorLineOf(candidate, row);
  const torqueNm = load.torqueNm ?? load.losslessNm;
  if (line !== null && torqueNm !== null && load.motorRpm !== null && load.exponent !== null) {
    const rpm = rpmUnderLoad(line, maxHertz, torqueNm, load.motorRpm, load.exponent);
    if (rpm <= allowed * EXACTLY) return null;
    const there = hertzFor(line, allowed, torqueAt(torqueNm, allowed, load.motorRpm, load.exponent));
    return there === null ? (maxHertz * allowed) / rpm : Math.min(maxHertz, there);
  }
  // Without a load or a slip the field's own speed is the most it can turn at.
  if (row.hertz === null) return null;
  const base = row.rpm ?? row.synchronousRpm;
  const rpm = base === null ? null : (base * maxHertz) / row.hertz;
  return rpm === null || rpm <= allowed * EXACTLY ? null : (maxHertz * allowed) / rpm;
}

const EXACTLY = 1 + 1e-9;

/** What is said where there is such a frequency. */
export const TOO_FAST = 'At its maximum frequency the drive would turn pump or motor faster than it may.';

/** Fastest the motor may turn, by its own plate or the pump's; null when neither tells. */
function allowedRpm(set: PumpSet, { maxRpm }: Motor): number | null {
  const { ratio } = drivenLoadOf(set);
  const { maxPumpRpm } = set.load;
  const byPump = maxPumpRpm === null || ratio === null ? null : maxPumpRpm * ratio;
  if (byPump === null || maxRpm === null) return byPump ?? maxRpm;
  return Math.min(byPump, maxRpm);
}
