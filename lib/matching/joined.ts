import { type Finding, worse } from './finding';

/**
 * One finding out of two on the same question: the worse grade with its values and clause, what both say, the worse
 * one first, and the work of either. Null counts for nothing.
 */
export function joined(a: Finding | null, b: Finding | null): Finding | null {
  if (a === null) return b;
  if (b === null) return a;
  const [first, second] = worse(a.grade, b.grade) === a.grade ? [a, b] : [b, a];
  return {
    ...first,
    says: `${first.says} ${second.says}`,
    work: first.work ?? second.work,
    cite: first.cite === second.cite ? first.cite : `${first.cite}; ${second.cite}`,
  };
}
