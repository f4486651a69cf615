'use client';

import { useActionState } from 'react';
import { ActionButton } from '@/app/look/action';
import { SectionHead } from '@/app/look/section-head';
import { SEEN, SEEN_WORDS } from '@/lib/plant/fault';
import { NOT_SENT } from './fault-state';
import { reportFaultHere } from './report-fault-here';

/** One touch tells what was seen and reports it: large, for gloves. Each is a button of a plain form. */
export function SeenButtons({ tag, pageKey }: { tag: string; pageKey: string }) {
  const [{ problem }, send] = useActionState(reportFaultHere, NOT_SENT);
  return (
    <section>
      <SectionHead title="What was seen?" aside="one touch reports it" />
      <form action={send} id="seen-buttons">
        <input type="hidden" name="tag" value={tag} />
        <input type="hidden" name="key" value={pageKey} />
        {problem !== null && (
          <p role="alert" className="problem-list mt-3">
            {problem}
          </p>
        )}
        <div className="mt-3 grid grid-cols-2 gap-2">
          {SEEN.map((one) => (
            <ActionButton key={one} second name="seen" value={one}>
              {SEEN_WORDS[one]}
            </ActionButton>
          ))}
        </div>
      </form>
    </section>
  );
}
