import type { Cell } from './table';
import { partLoadEfficiency } from './tables/part-load-efficiency';

const LOADS = [0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1, 1.2] as const;

/**
 * Efficiency at a part load over the motor's best. `load` is per unit of rated output. Between two printed loads and two
 * printed sizes in a straight line, of sizes by their ratio; a smaller or larger motor takes the nearest size's. The sizes
 * are printed by rated input: of a motor whose efficiency is not known its output does as well, since neighbours differ
 * little. Null below a tenth of load, where nothing is printed.
 */
export function partLoad(ratedKw: number, load: number): number | null {
  const { rows } = partLoadEfficiency;
  const above = rows.findIndex(({ ratedInputKw }) => ratedInputKw >= ratedKw);
  const larger = rows[above === -1 ? rows.length - 1 : above];
  const smaller = above > 0 ? rows[above - 1] : larger;
  if (larger === undefined || smaller === undefined) return null;
  const low = ratioAt(smaller.ratios, load);
  const high = ratioAt(larger.ratios, load);
  if (low === null || high === null || smaller === larger) return high;
  const share = Math.log(ratedKw / smaller.ratedInputKw) / Math.log(larger.ratedInputKw / smaller.ratedInputKw);
  return low + (high - low) * share;
}

function ratioAt(ratios: readonly Cell[], load: number): number | null {
  if (load < LOADS[0]) return null;
  let at: number = LOADS[0];
  let ratio = ratios[0]?.[0];
  for (let i = 1; i < LOADS.length; i++) {
    const nextAt = LOADS[i] as number;
    const next = ratios[i]?.[0];
    if (ratio === undefined || next === undefined) return null;
    if (load <= nextAt) return ratio + ((next - ratio) * (load - at)) / (nextAt - at);
    at = nextAt;
    ratio = next;
  }
  return ratio ?? null;
}
