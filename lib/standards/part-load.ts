import { partLoadEfficiency } from './tables/part-load-efficiency';

const LOADS = [0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1, 1.2] as const;

/**
 * Efficiency at a part load over the motor's best. `load` is per unit of rated output; a motor between two printed sizes
 * takes the smaller's, which falls sooner. Null below a tenth of load, where nothing is printed.
 */
export function partLoad(kw: number, load: number): number | null {
  if (load < LOADS[0]) return null;
  const ratios = ratiosOf(kw);
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

function ratiosOf(kw: number) {
  const { rows } = partLoadEfficiency;
  let ratios = rows[0]?.ratios ?? [];
  for (const row of rows) if (row.ratedInputKw <= kw) ratios = row.ratios;
  return ratios;
}
