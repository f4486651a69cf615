import type { Dimension } from '@/lib/standards/dimension';

/** The clauses of the two lengths compared; `rule` where neither has one. */
export function citeOfBoth(have: Dimension, need: Dimension, rule: string): string {
  if (have.cite === null) return need.cite ?? rule;
  return need.cite === null || need.cite === have.cite ? have.cite : `${have.cite}; ${need.cite}`;
}
