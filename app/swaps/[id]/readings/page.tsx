import type { Metadata } from 'next';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { dayText } from '@/app/moment';
import NotFound from '@/app/not-found';
import { addReadingsPath, swapPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { jobOfSwap } from '@/lib/register/queries/job-of-swap';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { AddReadingsForm } from './add-readings-form';

type Props = PageProps<'/swaps/[id]/readings'>;

export const metadata: Metadata = { title: 'Add readings' };

export default answered(async function AddReadingsPage({ params }: Props) {
  const id = written((await params).id);
  const actor = await whoMay('swap.record', addReadingsPath(id));
  must(actor, 'swap.record');
  const [job, { timezone }] = await Promise.all([jobOfSwap(actor, id), siteSettings(actor)]);
  if (job === null) {
    answerStatus(404);
    return <NotFound />;
  }
  return (
    <Sheet person={personOf(actor)} back={{ href: swapPath(id), words: 'Swap' }}>
      <TitleBlock
        small
        tag={job.setTag}
        name="Add readings"
        cells={[
          { label: 'In', value: <Tag>{job.motorIn}</Tag> },
          { label: 'Out', value: job.motorOut === null ? 'no motor' : <Tag>{job.motorOut}</Tag> },
          { label: 'Swapped', value: dayText(job.at, timezone) },
        ]}
      />
      <p className="pt-3">What was not read stays empty. What is told here is kept beside what was told before.</p>
      <AddReadingsForm requestKey={crypto.randomUUID()} swapId={id} steps={job.steps} predicted={job.predicted} />
    </Sheet>
  );
});
