import { alignmentTolerance as table } from './tables/alignment-tolerance';

export const ALIGNMENT_CITE =
  'common practice: suggested tolerances for short flexible couplings (read in two texts); the coupling maker’s own go first';

/** Greatest soft foot at any speed, mm. */
export const SOFT_FOOT_MM = table.softFootMm;

/**
 * What two shafts at a short flexible coupling may be out by: the row of the next printed speed at or above `rpm`, the
 * stricter of the two it lies between. Null above the last row.
 */
export function alignmentTolerance(rpm: number): { offsetMm: number; gapMmPer100: number } | null {
  const row = table.rows.find((one) => rpm <= one.rpm * SAME_SPEED);
  return row === undefined ? null : { offsetMm: row.offsetMm, gapMmPer100: row.gapMmPer100 };
}

/** A speed on no load is a little above the row's own. */
const SAME_SPEED = 1.001;
