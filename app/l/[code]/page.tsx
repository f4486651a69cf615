import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { FindForm } from '@/app/find-form';
import { labelledPath } from '@/app/labelled-path';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { labelPath, labelText, readLabelCode } from '@/lib/plant/label-code';
import { byLabel } from '@/lib/register/queries/by-label';

export const metadata: Metadata = { title: 'Label' };

/** Where the link on a label leads: to the page of what carries it, whatever its tag is now. */
export default answered(async function LabelPage({ params }: PageProps<'/l/[code]'>) {
  const typed = written((await params).code).slice(0, 100);
  const read = readLabelCode(typed);
  const actor = await whoMay('register.read', read.ok ? labelPath(read.value) : `/l/${encodeURIComponent(typed)}`);
  const found = read.ok ? await byLabel(actor, read.value) : null;
  if (found !== null) redirect(labelledPath(found));
  answerStatus(404);
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">No such label</h1>
      {read.ok ? (
        <p className="mt-2">
          Nothing of this site has the label <Tag>{labelText(read.value)}</Tag>. It may belong to another site.
        </p>
      ) : (
        <p className="mt-2">
          <Tag>{typed}</Tag> {read.problems.map(({ says }) => says).join('; ')}.
        </p>
      )}
      <FindForm typed={typed} />
    </Sheet>
  );
});
