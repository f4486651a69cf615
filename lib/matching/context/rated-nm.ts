import { torqueNmOf } from '@/lib/units/torque';
import type { RatingRow } from './rating-row';

/** What a motor may give continuously: rated power at rated speed, as re-rated for this supply. Null: not known. */
export function ratedNmOf({ kw, rpm, fullLoadTorqueNm }: RatingRow): number | null {
  if (kw === null) return null;
  return rpm === null ? fullLoadTorqueNm : torqueNmOf(kw, rpm);
}
