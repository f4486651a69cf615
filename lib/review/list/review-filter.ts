import { normOf } from '@/lib/plant/look-alike';
import type { ReviewRuleId, Urgency } from '../finding';
import type { ReviewRow } from './row';

export const STATES = ['open', 'accepted', 'all'] as const;
export const REVIEW_SORTS = ['urgency', 'money', 'tag', 'load'] as const;
export const GROUPINGS = ['area', 'rule'] as const;
export type ReviewSort = (typeof REVIEW_SORTS)[number];
export type Grouping = (typeof GROUPINGS)[number];

/** Stands for the sets of no area where an area is asked for. */
export const NO_AREA = 'none';

/** Which findings a list shows, in which order; null: whatever. */
export interface ReviewFilter {
  rule: ReviewRuleId | null;
  /** An id, or NO_AREA. */
  areaId: string | null;
  criticality: number | null;
  urgency: Urgency | null;
  state: (typeof STATES)[number];
  /** Words of tag, service, area, motor and of what the finding says; all of them. */
  q: string | null;
  sort: ReviewSort;
  group: Grouping | null;
}

export const ALL_OPEN: ReviewFilter = {
  ...{ rule: null, areaId: null, criticality: null, urgency: null, state: 'open', q: null },
  ...{ sort: 'urgency', group: null },
};

/** The rows that are asked for, in the order they came. */
export function asked<T extends ReviewRow>(rows: readonly T[], filter: ReviewFilter): T[] {
  const { rule, areaId, criticality, urgency, state } = filter;
  const words = (filter.q ?? '')
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return rows.filter(
    (row) =>
      (rule === null || row.finding.rule === rule) &&
      (areaId === null || (row.areaId ?? NO_AREA) === areaId) &&
      (criticality === null || row.criticality === criticality) &&
      (urgency === null || row.finding.urgency === urgency) &&
      (state === 'all' || row.isAccepted === (state === 'accepted')) &&
      hasAll(row, words),
  );
}

function hasAll(row: ReviewRow, words: readonly string[]): boolean {
  if (words.length === 0) return true;
  const { tag, service, area, motor, finding } = row;
  const text = [tag, service, area, motor, finding.says]
    .filter((part) => part !== null)
    .join(' ')
    .toLowerCase();
  const norms = [normOf(tag), normOf(motor)];
  // A tag is found however it is spaced: "p101" and "P-101".
  return words.every((word) => {
    const norm = normOf(word);
    return text.includes(word) || (norm !== '' && norms.some((one) => one.includes(norm)));
  });
}
