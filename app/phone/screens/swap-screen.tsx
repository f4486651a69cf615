import { CRITERION_WORDS, hoursText } from '@/app/look/words';
import { setPath } from '@/app/paths';
import { SwapHead } from '@/app/sets/[tag]/swap/[motor]/swap-head';
import type { SwapState } from '@/app/sets/[tag]/swap/[motor]/swap-state';
import { UNOFFERED_WORDS } from '@/app/sets/[tag]/unoffered-words';
import { workItems } from '@/app/sets/[tag]/work-items';
import type { Pack } from '@/lib/offline/pack';
import { tellChanged } from '../ask';
import type { CandidateHere } from '../asked';
import { go } from '../go';
import { keepSwap } from '../keep-swap';
import { Asked } from '../look/asked';
import { PhoneSwapForm } from '../look/phone-swap-form';
import { todayAt } from '../today-at';
import { useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** The record of a swap, kept on the phone until the register has it. */
export function SwapScreen({ tag, number }: { tag: string; number: string }) {
  const answer = useAsk('candidate', { tag, number });
  const shelves = useAsk('shelves', {});
  return (
    <Asked answer={answer} nothing={<NotHere what="motor" name={number} />}>
      {(here) => {
        const { motorId } = here;
        if (motorId === null) return <NotHere what="motor" name={number} />;
        return <SwapSheet here={here} motorInId={motorId} shelves={shelves.state === 'here' ? shelves.value : []} />;
      }}
    </Asked>
  );
}

function SwapSheet({ here, motorInId, shelves }: { here: CandidateHere; motorInId: string; shelves: Pack['shelves'] }) {
  const { set, pumpSet, motorOutId, candidate, result, job, unoffered, about } = here;
  const { motor } = candidate;
  const by = { settings: about.site.settings, asOf: todayAt(about) };
  const work = workItems(result, motor, by.settings, by.asOf);
  const act = async (form: FormData): Promise<SwapState> => {
    const kept = await keepSwap(form, here, motorInId, work);
    if (kept.outcome !== 'asked') return kept;
    tellChanged();
    go(setPath(set.tag), { replace: true });
    return kept;
  };
  return (
    <>
      <SwapHead
        tag={set.tag}
        out={pumpSet.failed === null ? null : pumpSet.failed.id}
        into={motor.id}
        result={result}
        judged="judged on this phone, kept with the record"
      />
      <PhoneSwapForm
        act={act}
        tag={set.tag}
        motor={motor.id}
        motorOut={
          motorOutId === null || pumpSet.failed === null ? null : { motorId: motorOutId, number: pumpSet.failed.id }
        }
        stops={candidate.from === 'set' ? candidate.stops : null}
        shelves={shelves.map(({ shelfId, store, shelf }) => ({ value: shelfId, words: `${store}, shelf ${shelf}` }))}
        work={work.map((item) => ({ ...item, time: hoursText(item.hours) }))}
        checks={result.findings.flatMap(({ grade, criterion, says }) =>
          grade === 'check' ? [{ criterion, name: CRITERION_WORDS[criterion], says }] : [],
        )}
        isUnsuitable={result.verdict === 'unsuitable'}
        gone={unoffered === null ? null : UNOFFERED_WORDS[unoffered]}
        steps={job.steps}
        predicted={job.predicted}
      />
    </>
  );
}
