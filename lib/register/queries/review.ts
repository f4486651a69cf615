import { type Actor, must } from '@/lib/auth/may';
import { type ReviewGroup, type ReviewSum, sumOf } from '@/lib/review/list/grouped';
import type { ReviewFilter } from '@/lib/review/list/review-filter';
import type { FoundRow } from '../review/acceptances';
import { askedRows } from '../review/asked-rows';
import { type Cured, withCures } from '../review/cured';

export interface ReviewList {
  /** One page of what is asked for, in its order; where it is grouped, group after group. */
  rows: (FoundRow & { cured: Cured })[];
  /** Of all that is asked for. */
  sum: ReviewSum;
  /** Of each group, where it is grouped. */
  groups: Pick<ReviewGroup<FoundRow>, 'key' | 'name' | 'sum'>[] | null;
  /** How many sets the review looked at, and how many of them stand empty. */
  sets: number;
  empty: number;
}

/** The findings of a site's sets that are asked for. `today` is a day of the site. */
export async function review(
  actor: Actor,
  { filter, today }: { filter: ReviewFilter; today: string },
  { page, perPage }: { page: number; perPage: number },
): Promise<ReviewList> {
  must(actor, 'review.read');
  const { kept, ordered, groups } = await askedRows(actor.siteId, filter, today);
  const shown: ReviewList['rows'] = [];
  const take = Math.min(perPage, 200);
  for await (const row of withCures(kept, ordered.slice((page - 1) * take, page * take), today)) shown.push(row);
  const reviewed = [...kept.sets.values()];
  return {
    rows: shown,
    sum: sumOf(ordered),
    groups: groups?.map(({ key, name, sum }) => ({ key, name, sum })) ?? null,
    sets: reviewed.length,
    empty: reviewed.filter(({ standing }) => standing === null).length,
  };
}
