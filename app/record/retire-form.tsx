'use client';

import { useActionState } from 'react';
import type { ThingName } from '@/lib/register/things/thing';
import { ActionButton } from '../look/action';
import { SectionHead } from '../look/section-head';
import { retireHere } from './retire-here';

/** Takes a record out of use. Nothing is deleted: its history stays, and it can be brought back by an undo. */
export function RetireForm({
  thing,
  id,
  version,
  path,
}: {
  thing: ThingName;
  id: string;
  version: number;
  path: string;
}) {
  const [problem, send] = useActionState<string | null, FormData>(retireHere, null);
  return (
    <section className="screen-only">
      <SectionHead title="Out of use" />
      <form action={send}>
        <p className="pt-3">Its history stays, and the change can be undone.</p>
        {problem !== null && (
          <p className="problem-list" role="alert">
            {problem}
          </p>
        )}
        <input type="hidden" name="thing" value={thing} />
        <input type="hidden" name="record" value={id} />
        <input type="hidden" name="version" value={version} />
        <input type="hidden" name="path" value={path} />
        <div className="mt-3 grid">
          <ActionButton second>Retire</ActionButton>
        </div>
      </form>
    </section>
  );
}
