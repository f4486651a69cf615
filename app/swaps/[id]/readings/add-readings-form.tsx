'use client';

import { useActionState } from 'react';
import type { AskState, Typed } from '@/app/ask-state';
import { ActionButton } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { ProblemList } from '@/app/look/problem-list';
import { ReadingsForm } from '@/app/readings/readings-form';
import { SIGNED_OUT } from '@/app/signed-out';
import type { Predicted } from '@/lib/job/predicted';
import { type ReadingTexts, textsFrom } from '@/lib/job/reading-texts';
import { NO_READINGS } from '@/lib/job/readings';
import type { Step } from '@/lib/job/step';
import { addReadingsHere } from './add-readings-here';

interface AddReadingsFormProps {
  requestKey: string;
  swapId: string;
  steps: readonly Step[];
  predicted: Predicted;
}

/** Readings told after a swap. A client component: only so is what was typed kept on a refusal. */
export function AddReadingsForm({ requestKey, swapId, steps, predicted }: AddReadingsFormProps) {
  const [state, send] = useActionState<AskState, FormData>(addReadingsHere, { outcome: 'asked' });
  const problems = state.outcome === 'refused' ? state.problems : [];
  const typed = 'typed' in state ? state.typed : null;
  const key = typed?.key?.[0];
  return (
    <form action={send} className="grow" noValidate key={JSON.stringify(state)}>
      {problems.length > 0 && (
        <div tabIndex={-1} ref={toFront}>
          <ProblemList problems={problems} />
        </div>
      )}
      {(state.outcome === 'away' || state.outcome === 'signed-out') && (
        <p role="alert" className="problem-list" tabIndex={-1} ref={toFront}>
          {state.outcome === 'away' ? AWAY : SIGNED_OUT}
        </p>
      )}
      <input type="hidden" name="key" value={key === undefined ? requestKey : key} />
      <input type="hidden" name="swapId" value={swapId} />
      <ReadingsForm
        steps={steps}
        predicted={predicted}
        value={NO_READINGS}
        {...(typed !== null && { typed: textsTyped(typed) })}
        wrong={(name) => problems.find(({ path }) => path === name)?.says ?? null}
      />
      <ActionBar>
        <ActionButton>Add the readings</ActionButton>
      </ActionBar>
    </form>
  );
}

const AWAY =
  'The register’s database does not answer. Nothing was kept; what you typed stands below. Send it again in a minute: it is kept once, however often it is sent.';

const textsTyped = (typed: Typed): ReadingTexts =>
  textsFrom(
    (name) => typed[name]?.[0] ?? '',
    (name) => typed[name] ?? [],
  );

const toFront = (element: HTMLElement | null) => element?.focus();
