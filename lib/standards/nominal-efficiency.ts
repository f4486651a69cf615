import { kwOfHp } from '@/lib/units/power';
import { citeOf } from './table';
import { efficiencyIec } from './tables/efficiency-iec';
import { efficiencyUs } from './tables/efficiency-us';

export type EfficiencyLevel = 'IE1' | 'IE2' | 'IE3' | 'IE4' | 'energy-efficient' | 'premium';

export interface NominalEfficiency {
  pct: number;
  cite: string;
}

/**
 * The least nominal efficiency of a level: the IE classes at 50 Hz, the two US levels at 60 Hz. Null where nothing is
 * printed. A power between two printed ones takes the nearer one's figure, from the midpoint on the larger's.
 */
export function nominalEfficiency(
  level: EfficiencyLevel,
  kw: number,
  poles: number,
  build: 'enclosed' | 'open',
): NominalEfficiency | null {
  const column = poles >= 2 && poles <= 8 ? poles / 2 - 1 : null;
  if (column === null) return null;
  let nearest: NominalEfficiency | null = null;
  let gap = Number.POSITIVE_INFINITY;
  const consider = (
    ratedKw: number,
    cell: readonly [number, 0 | 1 | 2, string] | null | undefined,
    clause: string,
  ): void => {
    const away = Math.abs(kw - ratedKw);
    if (away > gap) return;
    gap = away;
    nearest = cell === null || cell === undefined ? null : { pct: cell[0], cite: citeOf(clause, cell[1]) };
  };
  if (level === 'premium' || level === 'energy-efficient') {
    const clause = level === 'premium' ? 'NEMA MG 1 Table 12-12' : 'NEMA MG 1 Table 12-11';
    for (const row of efficiencyUs.rows)
      if (row.level === level && row.build === build) consider(kwOfHp(row.hp), row.pct[column], clause);
  } else {
    for (const row of efficiencyIec.rows)
      if (row.level === level) consider(row.kw, row.pct[column], `IEC 60034-30-1 ${level}, 50 Hz`);
  }
  return nearest;
}

const AT_60_HZ = ['premium', 'energy-efficient'] as const;
const AT_50_HZ = ['IE4', 'IE3', 'IE2', 'IE1'] as const;

/** The best level a stamped nominal efficiency reaches; null for none, or a frequency without a table here. */
export function levelReached(
  efficiencyPct: number,
  kw: number,
  poles: number,
  hertz: number,
  build: 'enclosed' | 'open',
): EfficiencyLevel | null {
  const levels = hertz === 60 ? AT_60_HZ : hertz === 50 ? AT_50_HZ : [];
  for (const level of levels) {
    const least = nominalEfficiency(level, kw, poles, build);
    if (least !== null && efficiencyPct >= least.pct) return level;
  }
  return null;
}
