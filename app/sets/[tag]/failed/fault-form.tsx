'use client';

import { useActionState } from 'react';
import { ActionButton } from '@/app/look/action';
import { Choice } from '@/app/look/choice';
import { TextAreaField } from '@/app/look/field';
import { PictureInput } from '@/app/pictures/picture-input';
import { SEEN, SEEN_WORDS } from '@/lib/plant/fault';
import { NOT_SENT } from './fault-state';
import { reportFaultHere } from './report-fault-here';

/** A fault told at length. A client component, since only so is what was typed kept on a refusal. */
export function FaultForm({ tag, pageKey }: { tag: string; pageKey: string }) {
  const [{ seen, says, problem }, send] = useActionState(reportFaultHere, NOT_SENT);
  return (
    <details className="mt-4 border-rule border-y" open={problem !== null} id="at-length">
      <summary className="more">Several, in words, or with a photograph</summary>
      <form action={send} noValidate key={`${seen.join()} ${says} ${problem}`}>
        <input type="hidden" name="tag" value={tag} />
        <input type="hidden" name="key" value={pageKey} />
        <Choice
          legend="Seen, heard or smelt"
          name="seen"
          kind="many"
          options={SEEN.map((one) => ({ value: one, words: SEEN_WORDS[one] }))}
          chosen={seen}
        />
        <TextAreaField
          label="What is wrong?"
          name="says"
          rows={2}
          maxLength={2_000}
          required={false}
          hint="Which trip fell, since when, after what."
          defaultValue={says}
          error={problem}
        />
        <PictureInput id="fault-camera" label="A photograph, with the camera" isCamera />
        <PictureInput id="fault-picture" label="Or a photograph that is here already" isCamera={false} />
        <div className="mt-3 mb-4 grid">
          <ActionButton>Report, and see what can go in</ActionButton>
        </div>
      </form>
    </details>
  );
}
