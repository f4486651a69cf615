import { NO_LOAD_POWER_FACTOR, partLoadPowerFactor as table } from './tables/part-load-power-factor';

const LOADS = [1, 0.75, 0.5] as const;

export const PART_LOAD_PF_CITE =
  'power factor by load, average of a text of the trade (read in one text); under half load towards 0.1 without load (an open textbook, read in one text)';

/**
 * Power factor at a part load, per unit, of a motor that has `ratedPf` at full load: it falls as the published average
 * does, in a straight line between the printed loads and from half load towards that without load. `load` is per unit
 * of rated output. Above full load nothing is printed: it stays. Null for a load below zero.
 */
export function partLoadPowerFactor(ratedPf: number, load: number): number | null {
  const shares = sharesOf();
  if (load < 0 || shares === null) return null;
  const [, threeQuarters, half] = shares;
  if (load >= 1) return ratedPf;
  if (load >= LOADS[1]) return ratedPf * between(load, LOADS[1], threeQuarters, LOADS[0], 1);
  if (load >= LOADS[2]) return ratedPf * between(load, LOADS[2], half, LOADS[1], threeQuarters);
  const idle = Math.min(NO_LOAD_POWER_FACTOR[0], ratedPf * half);
  return between(load, 0, idle, LOADS[2], ratedPf * half);
}

/** The average’s power factors over its own at full load. */
function sharesOf(): [number, number, number] | null {
  const [full, threeQuarters, half] = table.rows.find(({ what }) => what === 'average')?.pf ?? [];
  if (!full || !threeQuarters || !half) return null;
  return [1, threeQuarters[0] / full[0], half[0] / full[0]];
}

const between = (x: number, fromX: number, from: number, toX: number, to: number): number =>
  from + ((to - from) * (x - fromX)) / (toX - fromX);
