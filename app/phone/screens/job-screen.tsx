import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { isoDay } from '@/app/moment';
import { swapFormPath } from '@/app/paths';
import { JobSheet } from '@/app/sets/[tag]/job/[motor]/job-sheet';
import { workItems } from '@/app/sets/[tag]/work-items';
import type { CandidateHere } from '../asked';
import { Asked } from '../look/asked';
import { todayAt } from '../today-at';
import { useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** The job sheet, from what lies on the phone. */
export function JobScreen({ tag, number }: { tag: string; number: string }) {
  const answer = useAsk('candidate', { tag, number });
  return (
    <Asked answer={answer} nothing={<NotHere what="motor" name={number} />}>
      {(here) => <JobHere here={here} />}
    </Asked>
  );
}

function JobHere({ here: { set, pumpSet, candidate, result, drawing, job, about } }: { here: CandidateHere }) {
  const { motor } = candidate;
  const asOf = todayAt(about);
  return (
    <>
      <JobSheet
        tag={set.tag}
        service={set.service}
        area={set.area}
        siteName={about.site.name}
        day={isoDay(asOf)}
        set={pumpSet}
        candidate={candidate}
        result={result}
        work={workItems(result, motor, about.site.settings, asOf)}
        job={job}
        drawing={drawing}
      />
      <ActionBar>
        <Action href={swapFormPath(set.tag, motor.id)}>Record the swap</Action>
      </ActionBar>
    </>
  );
}
