import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { Sheet } from '@/app/look/sheet';
import { dayText, today } from '@/app/moment';
import { candidatePath, jobPath, swapFormPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { jobOf } from '@/lib/job/job';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { candidateFor } from '@/lib/register/candidate-for';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../../unknown-set';
import { comparison } from '../../candidates/[motor]/comparison';
import { unknownCandidate } from '../../unknown-candidate';
import { workItems } from '../../work-items';
import { JobSheet } from './job-sheet';

type Props = PageProps<'/sets/[tag]/job/[motor]'>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { tag, motor } = await params;
  return { title: `Job sheet, ${written(motor)} into ${written(tag)}` };
}

/** The swap on paper. */
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
  return (
    <Sheet wide person={personOf(actor)} back={{ href: candidatePath(row.tag, motor.id), words: motor.id }}>
      <div className="screen-only">
        <p className="label pb-3">Print it from the browser: one or two pages of A4 or Letter.</p>
      </div>
      <JobSheet
        tag={row.tag}
        service={row.service}
        area={row.area?.name ?? null}
        siteName={name}
        day={dayText(new Date(), timezone)}
        set={set}
        candidate={candidate}
        result={result}
        work={workItems(result, motor, settings, asOf)}
        job={job}
        drawing={comparison(set, motor, result.findings)}
      />
      <ActionBar>
        <Action href={swapFormPath(row.tag, motor.id)}>Record the swap</Action>
      </ActionBar>
    </Sheet>
  );
});
