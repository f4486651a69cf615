import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { openFindings } from '@/lib/job/open-findings';
import type { ReadingFinding } from '@/lib/job/reading-finding';
import { readingFindingsOfRow } from '../readings-row';

/** So many readings of one swap are looked through, the newest. */
const MOST = 200;

export interface OpenReadings {
  swapId: string;
  findings: ReadingFinding[];
}

/** What the readings of the set's last swap leave open; null where nothing does, or it was never swapped. */
export async function openReadings(actor: Actor, setId: string): Promise<OpenReadings | null> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const swap = await db.swap.findFirst({
    where: { siteId, setId },
    orderBy: { at: 'desc' },
    select: {
      id: true,
      readingFindings: true,
      laterReadings: { orderBy: { at: 'desc' }, take: MOST, select: { findings: true } },
    },
  });
  if (!swap) return null;
  const later = swap.laterReadings.map(({ findings }) => readingFindingsOfRow(findings)).reverse();
  const findings = openFindings([readingFindingsOfRow(swap.readingFindings), ...later]);
  return findings.length === 0 ? null : { swapId: swap.id, findings };
}
