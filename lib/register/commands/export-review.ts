import { type Actor, must } from '@/lib/auth/may';
import type { ReviewFilter } from '@/lib/review/list/review-filter';
import type { FoundRow } from '../review/acceptances';
import { askedRows } from '../review/asked-rows';
import { type Cured, withCures } from '../review/cured';
import { recordExport } from './export-step';

/**
 * The findings of a question, each with what would put it right, worked out while they are written; that they went out is in
 * the audit. `today` is a day of the site.
 */
export async function exportReview(
  actor: Actor,
  filter: ReviewFilter,
  today: string,
): Promise<AsyncIterable<FoundRow & { cured: Cured }>> {
  must(actor, 'review.read');
  must(actor, 'register.export');
  const { kept, ordered } = await askedRows(actor.siteId, filter, today);
  const after = { kind: 'review', rows: ordered.length };
  await recordExport(actor, after);
  return withCures(kept, ordered, today);
}
