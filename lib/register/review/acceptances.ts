import { db } from '@/lib/db/client';
import type { ReviewRow } from '@/lib/review/list/row';
import { day } from '../motor-row';

/** What a person said who let a finding stand. */
export interface ReviewAcceptanceNote {
  acceptanceId: string;
  reason: string;
  by: string;
  at: Date;
  /** The day on which it stands open again, YYYY-MM-DD. */
  againOn: string;
}

/** A finding of a site as a row, with what a person said of it. */
export interface FoundRow extends ReviewRow {
  /** Of one that is accepted, and of an open one that was, for other figures or until a day that has come. */
  note: ReviewAcceptanceNote | null;
}

/** As many acceptances of a site as are read: more than it has findings. */
const MOST = 100_000;

/** Which rows are accepted: those whose figures a person let stand, until the day told. `today` is a day of the site. */
export async function withAcceptances(
  siteId: string,
  rows: readonly ReviewRow[],
  today: string,
  setId: string | null = null,
): Promise<FoundRow[]> {
  const standing = await db.reviewAcceptance.findMany({
    where: { siteId, withdrawnAt: null, ...(setId !== null && { setId }) },
    include: { by: { select: { name: true } } },
    take: MOST,
  });
  const byFinding = new Map(standing.map((one) => [`${one.rule} ${one.setId}`, one]));
  return rows.map((row) => {
    const known = byFinding.get(`${row.finding.rule} ${row.setId}`);
    const againOn = day(known?.againOn ?? null);
    if (known === undefined || againOn === null) return { ...row, note: null };
    const { id, reason, by, at, figures } = known;
    const isAccepted = figures === row.finding.figures && againOn > today;
    return { ...row, isAccepted, note: { acceptanceId: id, reason, by: by.name, at, againOn } };
  });
}
