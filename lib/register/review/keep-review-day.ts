import { db } from '@/lib/db/client';
import { sumOf } from '@/lib/review/list/grouped';
import type { ReviewRow } from '@/lib/review/list/row';
import { today } from '../today';
import { withAcceptances } from './acceptances';
import { foundRows } from './found-rows';
import { keptReview } from './kept-review';

/** Keeps how a site's review stands today; what was kept of the same day before gives way. */
export async function keepReviewDay(siteId: string): Promise<void> {
  const kept = await keptReview(siteId);
  const text = today(kept.plant.timezone);
  const rows = await withAcceptances(siteId, foundRows(kept), text);
  const all = sumOf(rows);
  const open = sumOf(rows.filter(({ isAccepted }) => !isAccepted));
  const day = new Date(`${text}T00:00:00Z`);
  const before = await db.reviewDay.findFirst({ where: { siteId, day: { lt: day } }, orderBy: { day: 'desc' } });
  const stood = rows.map(findingKey);
  const stands = {
    ...{ sets: kept.sets.size, open: all.open, accepted: all.accepted, unpriced: open.unpriced },
    ...{ kwh: BigInt(open.kwh), moneyHundredths: BigInt(open.moneyHundredths), at: new Date() },
    ...{ stood, ...changesSince(before, stood) },
  };
  const key = { siteId, day };
  await db.reviewDay.upsert({ where: { siteId_day: key }, create: { ...key, ...stands }, update: stands });
  // Today is compared with the day before it until it ends; which findings stood on older days nobody asks any more.
  if (before !== null)
    await db.reviewDay.updateMany({
      where: { siteId, day: { lt: before.day }, stood: { isEmpty: false } },
      data: { stood: [] },
    });
}

/** A finding from one day to the next: the same rule at the same set. */
export const findingKey = ({ finding, setId }: Pick<ReviewRow, 'finding' | 'setId'>): string =>
  `${finding.rule} ${setId}`;

/** What came and what went since the day kept before; accepting a finding is neither. Null: which stood then is not known. */
function changesSince(
  before: { open: number; accepted: number; stood: string[] } | null,
  stood: readonly string[],
): { opened: number | null; closed: number | null } {
  if (before === null || before.stood.length !== before.open + before.accepted) return { opened: null, closed: null };
  const [then, now] = [new Set(before.stood), new Set(stood)];
  return {
    opened: stood.filter((one) => !then.has(one)).length,
    closed: before.stood.filter((one) => !now.has(one)).length,
  };
}

/** The same for every site that has a set in use, one after the other; ended by `signal`. */
export async function keepReviewDays(signal: AbortSignal): Promise<void> {
  const sites = await db.pumpSet.groupBy({ by: ['siteId'], where: { retiredAt: null } });
  for (const { siteId } of sites) {
    signal.throwIfAborted();
    await keepReviewDay(siteId);
  }
}
