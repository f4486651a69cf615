import { REVIEW_RULES } from '../finding';
import { type Grouping, NO_AREA } from './review-filter';
import type { ReviewRow } from './row';

/** Counts and sums of some findings. Every figure is whole, so that sums of sums are exact. */
export interface ReviewSum {
  count: number;
  open: number;
  accepted: number;
  /** What those of which it is known take in a year more, kWh. */
  kwh: number;
  /** The same in hundredths of the site's money. */
  moneyHundredths: number;
  /** So many cost energy, and how much money is not known. */
  unpriced: number;
}

export interface ReviewGroup<T extends ReviewRow> {
  /** An area's id or NO_AREA; a rule. */
  key: string;
  /** The area's name; null: of no area, or a rule. */
  name: string | null;
  rows: T[];
  sum: ReviewSum;
}

export function sumOf(rows: readonly ReviewRow[]): ReviewSum {
  const sum: ReviewSum = { count: 0, open: 0, accepted: 0, kwh: 0, moneyHundredths: 0, unpriced: 0 };
  for (const { finding, isAccepted } of rows) {
    const { cost } = finding;
    sum.count += 1;
    sum[isAccepted ? 'accepted' : 'open'] += 1;
    if (cost.kind !== 'not-energy' && cost.kwh !== null) sum.kwh += Math.round(cost.kwh);
    if (cost.kind === 'known') sum.moneyHundredths += Math.round(100 * cost.money);
    if (cost.kind === 'unpriced') sum.unpriced += 1;
  }
  return sum;
}

/** Rows by area (by name, those of none last) or by rule (in the order of the rules); within a group they keep their order. */
export function grouped<T extends ReviewRow>(rows: readonly T[], by: Grouping): ReviewGroup<T>[] {
  const groups = new Map<string, { name: string | null; rows: T[] }>();
  for (const row of rows) {
    const key = by === 'rule' ? row.finding.rule : (row.areaId ?? NO_AREA);
    const group = groups.get(key) ?? { name: by === 'rule' ? null : row.area, rows: [] };
    group.rows.push(row);
    groups.set(key, group);
  }
  const all = [...groups].map(([key, group]) => ({ key, ...group, sum: sumOf(group.rows) }));
  return all.sort(by === 'rule' ? byRule : byName);
}

type Named = Pick<ReviewGroup<ReviewRow>, 'key' | 'name'>;
const ORDER = new Map<string, number>(REVIEW_RULES.map((rule, i) => [rule, i]));
const byRule = (a: Named, b: Named): number => (ORDER.get(a.key) as number) - (ORDER.get(b.key) as number);

function byName(a: Named, b: Named): number {
  if (a.name === null || b.name === null) return Number(a.name === null) - Number(b.name === null);
  return a.name.localeCompare(b.name, 'en', { numeric: true }) || (a.key < b.key ? -1 : 1);
}
