import { type Context, contextOf, type JudgedBy } from '@/lib/matching/context';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Known, NOTHING_KNOWN } from './known';

/**
 * A set and the motor in it, which the engine judges as it would a candidate. The set keeps the motor that is or was in it
 * as its evidence (`failed`), so that the very same questions can be asked of another motor in its place.
 */
export interface ReviewCase {
  set: PumpSet;
  motor: Motor;
  context: Context;
  by: JudgedBy;
  /** Of this very motor. */
  known: Known;
}

/** The motor in the set as a candidate for its own place; null: the set stands empty. */
export function reviewCase(set: PumpSet, by: JudgedBy, known: Known): ReviewCase | null {
  return set.failed === null ? null : caseOf(set, set.failed, by, known);
}

/** The case of another motor in the place, or of another place: what a cure would make of it. */
export const caseOf = (set: PumpSet, motor: Motor, by: JudgedBy, known: Known = NOTHING_KNOWN): ReviewCase => ({
  set,
  motor,
  context: contextOf(set, motor, by),
  by,
  known,
});
