'use client';

import { useActionState } from 'react';
import { ActionButton } from '@/app/look/action';
import { TextAreaField } from '@/app/look/field';
import { SectionHead } from '@/app/look/section-head';
import { type FaultState, reportFaultHere } from './report-fault-here';

/** "It has failed", in the person's own words. A client component, since only so is what was typed kept on a refusal. */
export function FaultForm({ tag }: { tag: string }) {
  const [{ says, problem }, send] = useActionState<FaultState, FormData>(reportFaultHere, { says: '', problem: null });
  return (
    <section className="screen-only" id="fault">
      <SectionHead title="It has failed" />
      <form action={send} noValidate key={`${says} ${problem}`}>
        <input type="hidden" name="tag" value={tag} />
        <TextAreaField
          label="What is wrong?"
          name="says"
          rows={2}
          maxLength={2_000}
          required
          hint="What was seen, heard or smelt; which trip fell."
          defaultValue={says}
          error={problem}
        />
        <div className="mt-3 grid">
          <ActionButton second>Report the fault</ActionButton>
        </div>
      </form>
    </section>
  );
}
