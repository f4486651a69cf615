import { fullLoadCurrent } from '@/lib/matching/criteria/supply/full-load-current';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';
import { urgencyOf } from '../urgency-of';

/**
 * Can the overload be set to the plate's amps, and do contactor, cable and drive carry them? In A in the line. Not asked
 * where the set states none of them.
 */
export function protection({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const found = fullLoadCurrent(set, motor, context);
  const urgency = found === null ? null : urgencyOf(found);
  if (found === null || urgency === null) return null;
  const { have, need, unit, says, cite, reading } = found;
  const { overloadMinA, overloadMaxA, overloadIn, contactorA, cableA, drive } = set.supply;
  return raised({
    ...{ rule: 'protection', urgency, have, need, unit, says, cite, reading },
    figures: {
      ...{ amps: context.row.amps, overloadMinA, overloadMaxA, overloadIn, contactorA, cableA },
      ratedA: drive?.ratedA ?? null,
    },
  });
}
