import { REVIEW_RULES, URGENCIES } from '../finding';
import type { ReviewSort } from './review-filter';
import type { ReviewRow } from './row';

/**
 * Rows in the order asked: soonest, dearest, most loaded first, or by tag. What is not known stands last. Of equals the
 * sooner, then the dearer stands first, then the tag and the order of the rules decide: it never hangs on the order they came.
 */
export function inListOrder<T extends ReviewRow>(rows: readonly T[], sort: ReviewSort): T[] {
  const keys: Key[] = { urgency: [], money: [byMoney], tag: [byTag], load: [byLoad] }[sort];
  const all = [...keys, byUrgency, byMoney, byTag, byRule];
  return [...rows].sort((a, b) => {
    for (const key of all) {
      const difference = key(a, b);
      if (difference !== 0) return difference;
    }
    return 0;
  });
}

type Key = (a: ReviewRow, b: ReviewRow) => number;

const ALIKE = new Intl.Collator('en', { numeric: true });

const byUrgency: Key = (a, b) => URGENCIES.indexOf(a.finding.urgency) - URGENCIES.indexOf(b.finding.urgency);
const byRule: Key = (a, b) => REVIEW_RULES.indexOf(a.finding.rule) - REVIEW_RULES.indexOf(b.finding.rule);
const byTag: Key = (a, b) => ALIKE.compare(a.tag, b.tag) || (a.setId < b.setId ? -1 : a.setId > b.setId ? 1 : 0);
const byMoney: Key = (a, b) => mostFirst(moneyOf(a), moneyOf(b));
const byLoad: Key = (a, b) => mostFirst(a.loadPct, b.loadPct);

const moneyOf = ({ finding: { cost } }: ReviewRow): number | null => (cost.kind === 'known' ? cost.money : null);

const mostFirst = (a: number | null, b: number | null): number =>
  a === b ? 0 : a === null ? 1 : b === null ? -1 : b - a;
