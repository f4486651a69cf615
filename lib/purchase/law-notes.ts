import type { Motor } from '@/lib/plant/motor';
import { type LeastClass, leastClasses } from '@/lib/standards/efficiency-law';
import { nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import { figure } from '@/lib/units/figure';
import type { Demand } from './demand';

/**
 * Notes, not demands of a set: the least efficiency class that the law of each region asks of the motor on that day
 * (YYYY-MM-DD). Empty while its power or its poles are not known.
 */
export function lawNotes(asked: Motor, asOf: string): Demand[] {
  const [row] = asked.ratings;
  const { poles, classification, has, phases } = asked;
  if (row?.kw == null || poles === null || phases !== 3) return [];
  const { kw, hertz } = row;
  const hasBrake = has?.includes('brake') === true;
  const { now, next } = leastClasses({ kw, poles, hasBrake, isForArea: classification !== null, asOf });
  const note = (least: LeastClass, when: string): Demand => ({
    ...{ id: `law-${least.region}-${least.from}`, label: least.region, criterion: 'efficiency-class', bySet: [] },
    value: levelText(least.level, kw, poles, hertz),
    why: `${when} ${least.from}: ${least.cite}`,
  });
  return [...now.map((least) => note(least, 'since')), ...next.map((least) => note(least, 'from'))];
}

/** The class, and its nominal figure where a table of that frequency is at hand. */
function levelText(level: LeastClass['level'], kw: number, poles: number, hertz: number | null): string {
  const isOf60 = level === 'premium';
  const at60 = level === 'IE3' ? 'premium' : level === 'IE2' ? 'energy-efficient' : isOf60 ? level : null;
  const wanted = hertz === 60 ? at60 : hertz === 50 && !isOf60 ? level : null;
  const nominal = wanted === null ? null : nominalEfficiency(wanted, kw, poles, 'enclosed');
  const name = isOf60 ? 'premium (IE3)' : level;
  return nominal === null ? name : `${name}: ${figure(nominal.pct, 1)} %`;
}
