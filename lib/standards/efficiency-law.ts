import { citeOf } from './table';
import { type EfficiencyLawRow, efficiencyLaw } from './tables/efficiency-law';

export interface LeastClass {
  region: string;
  level: EfficiencyLawRow['level'];
  /** First day of force, YYYY-MM-DD. */
  from: string;
  cite: string;
}

export interface LawCase {
  /** Rated power, kW. */
  kw: number;
  poles: number;
  hasBrake: boolean;
  isForArea: boolean;
  /** The day of the purchase, YYYY-MM-DD. */
  asOf: string;
}

/**
 * What each region's law asks at least of a three-phase motor bought on that day, and what is already known to come. The
 * latest row in force wins: a stricter one is written after the one it tightens. Regions with no row for it are left out.
 */
export function leastClasses({ kw, poles, hasBrake, isForArea, asOf }: LawCase): {
  now: LeastClass[];
  next: LeastClass[];
} {
  const now = new Map<string, LeastClass>();
  const next: LeastClass[] = [];
  for (const row of efficiencyLaw.rows) {
    if (kw < row.fromKw || kw > row.toKw || !row.poles.includes(poles)) continue;
    if ((hasBrake && row.not.includes('brake')) || (isForArea && row.not.includes('area'))) continue;
    const { region, level, from, texts, src } = row;
    const least = { region, level, from, cite: citeOf(efficiencyLaw.source.texts[src] ?? src, texts) };
    if (from <= asOf) now.set(region, least);
    else next.push(least);
  }
  return { now: [...now.values()], next };
}
