import { FindingsThatFit, FindingsToDo, FindingsToKnow } from '@/app/look/finding-table';
import { HoursChain } from '@/app/look/hours-chain';
import { MountDrawing } from '@/app/look/mount-drawing';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { VerdictLine } from '@/app/look/verdict-line';
import { CandidateActions } from '@/app/sets/[tag]/candidates/[motor]/candidate-actions';
import { PointFigures } from '@/app/sets/[tag]/candidates/[motor]/point-figures';
import { Where } from '@/app/sets/[tag]/candidates/candidate-lines';
import { CautionList } from '@/app/sets/[tag]/caution-list';
import { chainOf, workItems } from '@/app/sets/[tag]/work-items';
import type { CandidateHere } from '../asked';
import { Asked } from '../look/asked';
import { todayAt } from '../today-at';
import { useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** One candidate: verdict, work, findings, drawing, cautions. */
export function CandidateScreen({ tag, number }: { tag: string; number: string }) {
  const answer = useAsk('candidate', { tag, number });
  return (
    <Asked answer={answer} nothing={<NotHere what="motor" name={number} />}>
      {(here) => <CandidateSheet here={here} />}
    </Asked>
  );
}

function CandidateSheet({ here }: { here: CandidateHere }) {
  const { set, pumpSet, candidate, result, drawing, job, unoffered, about } = here;
  const { motor } = candidate;
  const { settings } = about.site;
  const isUnsuitable = result.verdict === 'unsuitable';
  const asOf = todayAt(about);
  const items = workItems(result, motor, settings, asOf);
  return (
    <>
      <TitleBlock
        small
        tag={motor.id}
        name={
          <>
            for <Tag>{set.tag}</Tag>
            {set.service !== null && (
              <>
                , <bdi>{set.service}</bdi>
              </>
            )}
          </>
        }
        cells={[
          { label: 'Where', value: <Where candidate={candidate} /> },
          { label: 'Goes out', value: pumpSet.failed === null ? 'no motor' : <Tag>{pumpSet.failed.id}</Tag> },
        ]}
      />
      <VerdictLine verdict={result.verdict} hours={isUnsuitable ? null : result.hours} />
      {result.why.startsWith('Not offered') && <p>{result.why}</p>}
      {!isUnsuitable && <HoursChain items={chainOf(items, settings)} />}
      <FindingsToDo findings={result.findings} />
      <MountDrawing {...drawing} />
      <PointFigures point={result.operatingPoint} />
      <FindingsToKnow findings={result.findings} />
      <FindingsThatFit findings={result.findings} />
      {!isUnsuitable && <CautionList steps={job.steps} />}
      <CandidateActions tag={set.tag} candidate={candidate} verdict={result.verdict} unoffered={unoffered} />
    </>
  );
}
