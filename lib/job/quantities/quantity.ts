import type { CriterionId, Finding } from '@/lib/matching/finding';

/** One figure of the work. `value` null: not known, and `detail` says which reading to take. */
export interface Quantity {
  id: 'shims' | 'bore' | 'key' | 'sheave' | 'overload' | 'drive-plate' | 'drive-limits' | 'drive-duty';
  name: string;
  value: string | null;
  detail: string | null;
}

/** The reading that a finding asks for, else what it says; null where it was not asked. */
export function readingOf(findings: readonly Finding[], criterion: CriterionId): string | null {
  const finding = findings.find((one) => one.criterion === criterion);
  return finding === undefined ? null : (finding.reading ?? finding.says);
}
