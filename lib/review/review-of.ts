import type { ReviewFinding } from './finding';
import type { ReviewCase } from './review-case';
import { reviewRules } from './rules';

/** What the review raises of one set, in the order of the rules. */
export const reviewOf = (asked: ReviewCase): ReviewFinding[] => reviewRules.flatMap(([, ask]) => ask(asked) ?? []);
