import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { LeadsDrawing } from '@/app/look/leads-drawing';
import { MountDrawing } from '@/app/look/mount-drawing';
import { PrintSheet, PrintVerdict, Steps } from '@/app/look/print-sheet';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { dayText, today } from '@/app/moment';
import { candidatePath, jobPath, swapFormPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { jobOf } from '@/lib/job/job';
import { WHO_DECIDES } from '@/lib/job/who-decides';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { candidateFor } from '@/lib/register/candidate-for';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../../unknown-set';
import { comparison } from '../../candidates/[motor]/comparison';
import { Where } from '../../candidates/candidate-lines';
import { supplyFacts } from '../../set-facts';
import { unknownCandidate } from '../../unknown-candidate';
import { workItems } from '../../work-items';
import { FiguresOfWork } from './figures-of-work';
import { jobSteps } from './job-steps';
import { OutAndIn } from './out-and-in';
import { StepList } from './step-list';

type Props = PageProps<'/sets/[tag]/job/[motor]'>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { tag, motor } = await params;
  return { title: `Job sheet, ${written(motor)} into ${written(tag)}` };
}

/** The swap on paper: what goes out and in, what to do with its figures, the leads, and every step with room to write. */
export default answered(async function JobPage({ params }: Props) {
  const asked = await params;
  const [tag, id] = [written(asked.tag), written(asked.motor)];
  const actor = await whoMay('set.assess', jobPath(tag, id));
  must(actor, 'set.assess');
  const [known, { name, settings, timezone }] = await Promise.all([setByTag(actor, tag), siteSettings(actor)]);
  if (known === null) return unknownSet(actor, tag);
  const here = await candidateFor(actor, known, id);
  if (here === null || here.known === null) return unknownCandidate(actor, known.row.tag, id);
  const { row, set } = known;
  const { candidate } = here;
  const { motor } = candidate;
  const asOf = today(timezone);
  const result = judgeAlone(candidate, set, settings, asOf);
  const job = jobOf(set, motor, result.findings, { settings, asOf });
  const sheet = jobSteps(result, workItems(result, motor, settings, asOf));
  const isUnsuitable = result.verdict === 'unsuitable';
  return (
    <Sheet wide person={personOf(actor)} back={{ href: candidatePath(row.tag, motor.id), words: motor.id }}>
      <div className="screen-only">
        <p className="label pb-3">Print it from the browser: one or two pages of A4 or Letter.</p>
      </div>
      <PrintSheet
        kind="Job sheet"
        title={
          <>
            <Tag>{motor.id}</Tag> into <Tag>{row.tag}</Tag>
          </>
        }
        aside={<bdi>{name}</bdi>}
        cells={[
          { label: 'Set', value: <Tag>{row.tag}</Tag> },
          { label: 'Serves', value: <bdi>{row.service ?? 'not told'}</bdi> },
          { label: 'Area', value: <bdi>{row.area?.name ?? 'not told'}</bdi> },
          { label: 'Supply', value: supplyFacts(set)[0]?.value ?? 'not told' },
          { label: 'Date', value: dayText(new Date(), timezone) },
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
        <MountDrawing {...comparison(set, motor, result.findings)} only="side" isBare />
      </PrintSheet>
      <ActionBar>
        <Action href={swapFormPath(row.tag, motor.id)}>Record the swap</Action>
      </ActionBar>
    </Sheet>
  );
});
