import { type Finding, isWorse } from './finding';

/**
 * One finding out of two on the same question: the worse grade with its values and clause, what both say, the worse
 * one first, and the work of either. Null counts for nothing.
 */
export function joined(a: Finding | null, b: Finding | null): Finding | null {
  if (a === null) return b;
  if (b === null) return a;
  const first = isWorse(b.grade, a.grade) ? b : a;
  const second = first === a ? b : a;
  const { criterion, grade, have, need, unit, difference, work, by, reading, cite } = first;
  return {
    criterion,
    grade,
    have,
    need,
    unit,
    difference,
    says: `${first.says} ${second.says}`,
    work: work ?? second.work,
    by,
    reading,
    cite: cite === second.cite ? cite : `${cite}; ${second.cite}`,
  };
}
