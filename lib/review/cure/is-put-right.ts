import { findingsOf } from '@/lib/matching/findings-of';
import type { ReviewRuleId } from '../finding';
import type { ReviewCase } from '../review-case';
import { reviewOf } from '../review-of';
import type { ReviewRule } from '../rule';

/**
 * Whether a change of motor or place puts it right: the rule raises nothing any more, and the review raises nothing new
 * that would have to be put right in its turn.
 */
export function isPutRight(asked: ReviewCase, rule: ReviewRule, after: ReviewCase): boolean {
  if (rule(after) !== null) return false;
  const before = new Set(reviewOf(asked).map((one) => one.rule));
  return reviewOf(after).every(
    ({ rule: id, urgency }) => before.has(id) || id === LISTED_AS_WORK || urgency === 'look' || urgency === 'next-time',
  );
}

/** Another motor has other amps: what they ask of the starter is in the work of the swap. */
const LISTED_AS_WORK: ReviewRuleId = 'protection';

/** Whether the engine blocks nothing after that it did not block before. */
export function isNoWorse(asked: ReviewCase, after: ReviewCase): boolean {
  const before = blocked(asked);
  return [...blocked(after)].every((criterion) => before.has(criterion));
}

const blocked = ({ set, motor, context }: ReviewCase): Set<string> =>
  new Set(findingsOf(set, motor, context).flatMap(({ grade, criterion }) => (grade === 'block' ? [criterion] : [])));
