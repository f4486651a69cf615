'use client';

import { useActionState } from 'react';
import type { Edit } from '@/lib/fields/state';
import { ActionButton } from '../look/action';
import { ActionBar } from '../look/action-bar';
import { changeManyHere } from './change-many-here';

/** The word that makes a change that was shown. */
export function ChangeManyForm({
  thing,
  edit,
  records,
  path,
  words,
}: {
  thing: 'set' | 'motor';
  edit: Edit;
  records: readonly (readonly [string, number])[];
  path: string;
  words: string;
}) {
  const [problem, send] = useActionState<string | null, FormData>(changeManyHere, null);
  return (
    <form action={send}>
      {problem !== null && (
        <p className="problem-list" role="alert">
          {problem}
        </p>
      )}
      <input type="hidden" name="thing" value={thing} />
      <input type="hidden" name="edit" value={JSON.stringify(edit)} />
      <input type="hidden" name="records" value={JSON.stringify(records)} />
      <input type="hidden" name="path" value={path} />
      <ActionBar>
        <ActionButton>{words}</ActionButton>
      </ActionBar>
    </form>
  );
}
