import { useState } from 'react';
import { ProblemList } from '@/app/look/problem-list';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { setPath } from '@/app/paths';
import { ReadingsForm } from '@/app/readings/readings-form';
import { type ReadingProblem, readingsOf, textsFrom } from '@/lib/job/reading-texts';
import { isTold, NO_READINGS } from '@/lib/job/readings';
import { tellChanged } from '../ask';
import type { CandidateHere } from '../asked';
import { go } from '../go';
import { keepMessage } from '../keep-message';
import { type LastSwap, lastSwapOf } from '../last-swap';
import { Asked } from '../look/asked';
import { useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** Readings of the last swap, told after it was recorded: running amps of the next morning, say. */
export function ReadingsScreen({ tag }: { tag: string }) {
  const answer = useAsk('set', { tag });
  return (
    <Asked answer={answer} nothing={<NotHere what="set" name={tag} />}>
      {(here) => {
        const swap = lastSwapOf(here);
        return swap === null ? (
          <p className="pt-4">No swap that put in the motor which stands here now lies on this phone.</p>
        ) : (
          <Readings tag={here.set.tag} swap={swap} />
        );
      }}
    </Asked>
  );
}

function Readings({ tag, swap }: { tag: string; swap: LastSwap }) {
  const answer = useAsk('candidate', { tag, number: swap.motorIn });
  return (
    <Asked answer={answer} nothing={<NotHere what="motor" name={swap.motorIn} />}>
      {(here) => <ReadingsSheet here={here} swap={swap} />}
    </Asked>
  );
}

function ReadingsSheet({ here: { set, job, about }, swap }: { here: CandidateHere; swap: LastSwap }) {
  const [problems, setProblems] = useState<ReadingProblem[]>([]);
  const send = async (form: FormData) => {
    const texts = textsFrom(
      (name) => String(form.get(name) ?? ''),
      (name) => form.getAll(name).map(String),
    );
    const read = readingsOf(texts);
    if (read.problems.length > 0) return setProblems(read.problems);
    if (!isTold(read.readings)) return setProblems([{ path: 'ticked', says: 'Nothing was ticked or read yet.' }]);
    const { swapId, swapKey } = swap;
    const body = { swapId, swapKey, readings: read.readings, takenAt: new Date().toISOString() };
    const kept = await keepMessage(about, {
      kind: 'readings',
      tag: set.tag,
      says: `Readings of ${swap.motorIn}`,
      body,
    });
    if (kept.outcome === 'refused') return setProblems([{ path: 'ticked', says: kept.says }]);
    tellChanged();
    go(setPath(set.tag), { replace: true });
  };
  return (
    <>
      <TitleBlock
        small
        tag={set.tag}
        name="Add readings"
        cells={[{ label: 'Motor', value: <Tag>{swap.motorIn}</Tag> }]}
      />
      <p className="pt-3">What was not read stays empty. What is told here is kept beside what was told before.</p>
      <form
        className="grow"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void send(new FormData(event.currentTarget));
        }}
      >
        {problems.length > 0 && <ProblemList problems={problems} />}
        <ReadingsForm
          steps={job.steps}
          predicted={job.predicted}
          value={NO_READINGS}
          wrong={(name) => problems.find(({ path }) => path === name)?.says ?? null}
        />
        <div className="actions">
          <button className="action" type="submit">
            Keep the readings
          </button>
        </div>
      </form>
    </>
  );
}
