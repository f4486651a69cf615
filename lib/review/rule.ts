import type { ReviewFinding } from './finding';
import type { ReviewCase } from './review-case';

/** One question asked of a set and its motor. Null: nothing is raised, or it is not asked of this set. */
export type ReviewRule = (asked: ReviewCase) => ReviewFinding | null;
