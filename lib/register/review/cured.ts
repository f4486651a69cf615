import type { Cure } from '@/lib/review/cure/cure';
import { type CureEnergy, cureEnergy } from '@/lib/review/cure/cure-energy';
import { curesOf } from '@/lib/review/cure/cures-of';
import type { ReviewFinding } from '@/lib/review/finding';
import { reviewCase } from '@/lib/review/review-case';
import { turns } from '../next-turn';
import type { KeptReview } from './kept-review';
import type { ShelfNow } from './shelf-now';

/** What would put a finding right, each motor with where it waits and what it takes in a year. */
export interface Cured {
  cures: { cure: Cure; energy: CureEnergy | null; shelf: string | null }[];
  /** Why there is none; null where there is. */
  why: string | null;
}

/** The cures of a finding hold as long as the shelf and the day. */
const kept = new WeakMap<ReviewFinding, { shelf: ShelfNow; asOf: string; cured: Cured }>();

/** Adds to rows what would put them right. `asOf`: a day of the site, YYYY-MM-DD, for what lay long on a shelf. */
export async function* withCures<T extends { setId: string; finding: ReviewFinding }>(
  review: KeptReview,
  rows: readonly T[],
  asOf: string,
): AsyncGenerator<T & { cured: Cured }> {
  const turn = turns();
  for (const row of rows) {
    await turn();
    yield { ...row, cured: curedOf(review, row, asOf) };
  }
}

function curedOf(review: KeptReview, { setId, finding }: { setId: string; finding: ReviewFinding }, asOf: string) {
  const { shelf } = review;
  const known = kept.get(finding);
  if (known !== undefined && known.shelf === shelf && known.asOf === asOf) return known.cured;
  const standing = review.sets.get(setId)?.standing;
  const asked = standing ? reviewCase(standing.asked.set, { ...standing.asked.by, asOf }, standing.asked.known) : null;
  if (asked === null) return NONE;
  const { cures, why } = curesOf(asked, finding, shelf.passing);
  const cured: Cured = {
    cures: cures.map((cure) => ({
      cure,
      energy: cureEnergy(asked, cure, shelf.motorOf),
      shelf: cure.kind === 'shelf' ? placeOf(review, cure.motor) : null,
    })),
    why,
  };
  kept.set(finding, { shelf, asOf, cured });
  return cured;
}

const NONE: Cured = { cures: [], why: 'The set stands empty.' };

/** "Main / A1". */
function placeOf({ plant }: KeptReview, number: string): string | null {
  for (const { motor, store, shelf } of plant.motors.values())
    if (motor.id === number) return [store, shelf].filter((part) => part !== null).join(' / ');
  return null;
}
