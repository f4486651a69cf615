import { grouped, type ReviewGroup } from '@/lib/review/list/grouped';
import { inListOrder } from '@/lib/review/list/in-list-order';
import { asked, type ReviewFilter } from '@/lib/review/list/review-filter';
import { type FoundRow, withAcceptances } from './acceptances';
import { foundRows } from './found-rows';
import { type KeptReview, keptReview } from './kept-review';

/** The findings of a site that are asked for, in their order; where they are grouped, group after group. */
export async function askedRows(
  siteId: string,
  filter: ReviewFilter,
  today: string,
): Promise<{ kept: KeptReview; ordered: FoundRow[]; groups: ReviewGroup<FoundRow>[] | null }> {
  const kept = await keptReview(siteId);
  const rows = inListOrder(asked(await withAcceptances(siteId, foundRows(kept), today), filter), filter.sort);
  const groups = filter.group === null ? null : grouped(rows, filter.group);
  return { kept, ordered: groups === null ? rows : groups.flatMap((group) => group.rows), groups };
}
