import Link from 'next/link';
import { SectionHead } from '@/app/look/section-head';
import { addReadingsPath, swapPath } from '@/app/paths';
import { ReadingTable } from '@/app/readings/reading-table';
import type { OpenReadings } from '@/lib/register/queries/open-readings';

/** What the readings of the last swap leave open, at the top of the set until later ones clear it. Null: nothing. */
export function OpenReadingsHere({ open }: { open: OpenReadings | null }) {
  if (open === null) return null;
  return (
    <section>
      <SectionHead title="Open since the last swap" />
      <ReadingTable title="Open since the last swap" findings={open.findings} />
      <p className="flex flex-wrap gap-x-6 pt-2 print:hidden">
        <Link className="to" href={addReadingsPath(open.swapId)}>
          Read again
        </Link>
        <Link className="to" href={swapPath(open.swapId)}>
          The swap
        </Link>
      </p>
    </section>
  );
}
