import { unbalanceDerating } from './tables/unbalance-derating';

/** No derating up to this unbalance: NEMA MG 1 12.45 and 14.36 (read in two texts). */
export const BALANCED_UP_TO_PCT = 1;

/** Share of rated output left at a voltage unbalance in per cent; null above 5 %, where running is not recommended. */
export function unbalanceFactor(unbalancePct: number): number | null {
  if (unbalancePct <= BALANCED_UP_TO_PCT) return 1;
  let lowerPct = 0;
  let lower = 1;
  for (const { unbalancePct: upperPct, factor } of unbalanceDerating.rows) {
    if (unbalancePct <= upperPct)
      return lower + ((factor[0] - lower) * (unbalancePct - lowerPct)) / (upperPct - lowerPct);
    lowerPct = upperPct;
    lower = factor[0];
  }
  return null;
}
