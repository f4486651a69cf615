import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { CoverLostHere } from '@/app/cover/cover-lost-here';
import { Sheet } from '@/app/look/sheet';
import { CRITERION_WORDS, hoursText } from '@/app/look/words';
import { dayText, today } from '@/app/moment';
import { candidatePath, swapFormPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { jobOf } from '@/lib/job/job';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { candidateFor } from '@/lib/register/candidate-for';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { shelves } from '@/lib/register/queries/shelves';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../../unknown-set';
import { unknownCandidate } from '../../unknown-candidate';
import { UNOFFERED_WORDS } from '../../unoffered-words';
import { workItems } from '../../work-items';
import { recordSwapHere } from './record-swap-here';
import { SwapForm } from './swap-form';
import { SwapHead } from './swap-head';

type Props = PageProps<'/sets/[tag]/swap/[motor]'>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { tag, motor } = await params;
  return { title: `Record the swap, ${written(motor)} into ${written(tag)}` };
}

export default answered(async function SwapPage({ params }: Props) {
  const asked = await params;
  const [tag, id] = [written(asked.tag), written(asked.motor)];
  const actor = await whoMay('swap.record', swapFormPath(tag, id));
  must(actor, 'swap.record');
  const [known, { settings, timezone }, places] = await Promise.all([
    setByTag(actor, tag),
    siteSettings(actor),
    shelves(actor),
  ]);
  if (known === null) return unknownSet(actor, tag);
  const here = await candidateFor(actor, known, id);
  if (here === null || here.known === null) return unknownCandidate(actor, known.row.tag, id);
  const { row, set } = known;
  const { candidate, unoffered } = here;
  const { motor } = candidate;
  const asOf = today(timezone);
  const result = judgeAlone(candidate, known.set, settings, asOf);
  const job = jobOf(set, motor, result.findings, { settings, asOf });
  return (
    <Sheet person={personOf(actor)} back={{ href: candidatePath(row.tag, motor.id), words: motor.id }}>
      <SwapHead
        tag={row.tag}
        out={set.failed === null ? null : set.failed.id}
        into={motor.id}
        day={dayText(new Date(), timezone)}
        result={result}
        judged="judged now, kept with the record"
      />
      <SwapForm
        act={recordSwapHere}
        requestKey={crypto.randomUUID()}
        tag={row.tag}
        motor={motor.id}
        motorOut={row.motor === null ? null : { motorId: row.motor.id, number: row.motor.plantNumber }}
        stops={
          candidate.from === 'set'
            ? { setId: candidate.stops.setId, tag: candidate.stops.tag, service: candidate.stops.service }
            : null
        }
        shelves={places.map(({ shelfId, store, shelf }) => ({ value: shelfId, words: `${store}, shelf ${shelf}` }))}
        work={workItems(result, motor, settings, asOf).map((item) => ({ ...item, time: hoursText(item.hours) }))}
        checks={result.findings.flatMap(({ grade, criterion, says }) =>
          grade === 'check' ? [{ criterion, name: CRITERION_WORDS[criterion], says }] : [],
        )}
        isUnsuitable={result.verdict === 'unsuitable'}
        gone={unoffered === null ? null : UNOFFERED_WORDS[unoffered]}
        steps={job.steps}
        predicted={job.predicted}
      />
      {candidate.from === 'shelf' && <CoverLostHere actor={actor} number={motor.id} isTaken={false} />}
    </Sheet>
  );
});
