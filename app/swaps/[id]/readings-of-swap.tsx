import Link from 'next/link';
import { SectionHead } from '@/app/look/section-head';
import { momentText } from '@/app/moment';
import { addReadingsPath } from '@/app/paths';
import { ReadingTable } from '@/app/readings/reading-table';
import { ReadingsTold } from '@/app/readings/readings-told';
import type { Step } from '@/lib/job/step';
import type { KnownSwap } from '@/lib/register/queries/swap-by-id';

/** What was read and ticked with a swap and since, each with what it said, who told it and when. */
export function ReadingsOfSwap({
  swap,
  steps,
  mayAdd,
  timezone,
}: {
  swap: KnownSwap;
  steps: readonly Step[];
  mayAdd: boolean;
  timezone: string;
}) {
  const { readings, readingFindings, laterReadings } = swap;
  return (
    <section>
      <SectionHead title="Readings" />
      {readings === null && laterReadings.length === 0 && <p className="pt-3">None were told.</p>}
      {readings !== null && (
        <>
          <p className="label pt-3">
            With the swap, <bdi>{swap.by}</bdi>
          </p>
          <ReadingsTold readings={readings} steps={steps} />
          {readingFindings.length > 0 && <ReadingTable title="Readings with the swap" findings={readingFindings} />}
        </>
      )}
      {laterReadings.map((later) => (
        <section key={later.id}>
          <p className="label pt-6">
            {momentText(later.at, timezone)}, <bdi>{later.by}</bdi>
            {later.takenAt !== null && `; taken ${momentText(later.takenAt, timezone)} by the phone’s clock`}
          </p>
          <ReadingsTold readings={later.readings} steps={null} />
          {later.findings.length > 0 && (
            <ReadingTable title={`Readings of ${momentText(later.at, timezone)}`} findings={later.findings} />
          )}
        </section>
      ))}
      {mayAdd && (
        <p className="pt-3 screen-only">
          <Link className="to" href={addReadingsPath(swap.swapId)}>
            Add readings
          </Link>
        </p>
      )}
    </section>
  );
}
