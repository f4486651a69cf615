import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { LeadsDrawing } from '@/app/look/leads-drawing';
import { MountDrawing } from '@/app/look/mount-drawing';
import { PrintSheet, PrintVerdict, Steps } from '@/app/look/print-sheet';
import { Tag } from '@/app/look/tag';
import { isoDay } from '@/app/moment';
import { candidatePath, swapFormPath } from '@/app/paths';
import { Where } from '@/app/sets/[tag]/candidates/candidate-lines';
import { FiguresOfWork } from '@/app/sets/[tag]/job/[motor]/figures-of-work';
import { jobSteps } from '@/app/sets/[tag]/job/[motor]/job-steps';
import { OutAndIn } from '@/app/sets/[tag]/job/[motor]/out-and-in';
import { StepList } from '@/app/sets/[tag]/job/[motor]/step-list';
import { supplyFacts } from '@/app/sets/[tag]/set-facts';
import { workItems } from '@/app/sets/[tag]/work-items';
import { WHO_DECIDES } from '@/lib/job/who-decides';
import type { CandidateHere, Status } from '../asked';
import { Asked } from '../look/asked';
import { PhoneSheet } from '../look/phone-sheet';
import { todayAt } from '../today-at';
import { type Answer, useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** The job sheet, from what lies on the phone. */
export function JobScreen({ status, tag, number }: { status: Answer<Status>; tag: string; number: string }) {
  const answer = useAsk('candidate', { tag, number });
  return (
    <PhoneSheet status={status} back={{ href: candidatePath(tag, number), words: number }}>
      <Asked answer={answer} nothing={<NotHere what="motor" name={number} />}>
        {(here) => <JobSheet here={here} />}
      </Asked>
    </PhoneSheet>
  );
}

function JobSheet({ here: { set, pumpSet, candidate, result, drawing, job, about } }: { here: CandidateHere }) {
  const { motor } = candidate;
  const asOf = todayAt(about);
  const sheet = jobSteps(result, workItems(result, motor, about.site.settings, asOf));
  const isUnsuitable = result.verdict === 'unsuitable';
  return (
    <>
      <PrintSheet
        kind="Job sheet"
        title={
          <>
            <Tag>{motor.id}</Tag> into <Tag>{set.tag}</Tag>
          </>
        }
        aside={<bdi>{about.site.name}</bdi>}
        cells={[
          { label: 'Set', value: <Tag>{set.tag}</Tag> },
          { label: 'Serves', value: <bdi>{set.service ?? 'not told'}</bdi> },
          { label: 'Area', value: <bdi>{set.area ?? 'not told'}</bdi> },
          { label: 'Supply', value: supplyFacts(pumpSet)[0]?.value ?? 'not told' },
          { label: 'Date', value: isoDay(asOf) },
        ]}
        signs={['Done by, date', 'Checked by, date']}
      >
        <PrintVerdict
          verdict={result.verdict}
          hours={isUnsuitable ? null : result.hours}
          says={isUnsuitable ? 'The judgement says it does not fit: a competent person decides.' : sheet.sum}
        />
        <p className="say">{WHO_DECIDES}</p>
        <OutAndIn set={pumpSet} motor={motor} where={<Where candidate={candidate} />} />
        <div className="columns">
          <StepList stage="make-safe" steps={job.steps} />
          {sheet.readings.length > 0 && <Steps title="To read and check" steps={sheet.readings} />}
          <StepList stage="take-out" steps={job.steps} />
          <Steps title="To do" steps={sheet.work} />
          <FiguresOfWork quantities={job.quantities} />
          <section>
            <h2>Leads for this supply</h2>
            <LeadsDrawing connection={job.connection} />
          </section>
          <StepList stage="before-power" steps={job.steps} />
          <StepList stage="line-up" steps={job.steps} />
          <StepList stage="before-restart" steps={job.steps} />
          <StepList stage="running" steps={job.steps} />
        </div>
        <MountDrawing {...drawing} only="side" isBare />
      </PrintSheet>
      <ActionBar>
        <Action href={swapFormPath(set.tag, motor.id)}>Record the swap</Action>
      </ActionBar>
    </>
  );
}
