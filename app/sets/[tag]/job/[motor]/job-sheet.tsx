import { LeadsDrawing } from '@/app/look/leads-drawing';
import { MountDrawing, type MountDrawingProps } from '@/app/look/mount-drawing';
import { PrintSheet, PrintVerdict, Steps } from '@/app/look/print-sheet';
import { Tag } from '@/app/look/tag';
import type { Job } from '@/lib/job/job';
import { WHO_DECIDES } from '@/lib/job/who-decides';
import type { Result } from '@/lib/matching/assess';
import type { Candidate } from '@/lib/matching/offer/candidate';
import type { PumpSet } from '@/lib/plant/set';
import { Where } from '../../candidates/candidate-lines';
import { supplyFacts } from '../../set-facts';
import type { WorkItem } from '../../work-items';
import { FiguresOfWork } from './figures-of-work';
import { jobSteps } from './job-steps';
import { OutAndIn } from './out-and-in';
import { StepList } from './step-list';

export interface JobSheetProps {
  tag: string;
  service: string | null;
  area: string | null;
  siteName: string;
  /** The day as people read it. */
  day: string;
  set: PumpSet;
  candidate: Candidate;
  result: Result;
  work: readonly WorkItem[];
  job: Job;
  drawing: MountDrawingProps;
}

/** What goes out and in, what to do with its figures, the leads, and every step with room to write: by the register or a phone. */
export function JobSheet(props: JobSheetProps) {
  const { tag, service, area, siteName, day, set, candidate, result, work, job, drawing } = props;
  const { motor } = candidate;
  const sheet = jobSteps(result, work);
  const isUnsuitable = result.verdict === 'unsuitable';
  return (
    <PrintSheet
      kind="Job sheet"
      title={
        <>
          <Tag>{motor.id}</Tag> into <Tag>{tag}</Tag>
        </>
      }
      aside={<bdi>{siteName}</bdi>}
      cells={[
        { label: 'Set', value: <Tag>{tag}</Tag> },
        { label: 'Serves', value: <bdi>{service ?? 'not told'}</bdi> },
        { label: 'Area', value: <bdi>{area ?? 'not told'}</bdi> },
        { label: 'Supply', value: supplyFacts(set)[0]?.value ?? 'not told' },
        { label: 'Date', value: day },
      ]}
      signs={['Done by, date', 'Checked by, date']}
    >
      <PrintVerdict
        verdict={result.verdict}
        hours={isUnsuitable ? null : result.hours}
        says={isUnsuitable ? 'The judgement says it does not fit: a competent person decides.' : sheet.sum}
      />
      <p className="say">{WHO_DECIDES}</p>
      <OutAndIn set={set} motor={motor} where={<Where candidate={candidate} />} />
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
  );
}
