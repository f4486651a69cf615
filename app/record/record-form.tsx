'use client';

import { type FormEvent, Fragment, type ReactNode, useActionState, useDeferredValue, useState } from 'react';
import type { Field, Units } from '@/lib/fields/field';
import type { FieldGroup } from '@/lib/fields/motor-fields';
import type { Typed } from '@/lib/fields/read-form';
import { ActionButton } from '../look/action';
import { ActionBar } from '../look/action-bar';
import { ProblemList } from '../look/problem-list';
import { SectionHead } from '../look/section-head';
import { SIGNED_OUT } from '../signed-out';
import { FieldInput } from './field-input';
import type { RecordState } from './record-state';
import { typedIn } from './typed-in';

export interface RecordFormProps {
  save: (before: RecordState, form: FormData) => Promise<RecordState>;
  first: RecordState;
  units: Units;
  groups: readonly FieldGroup[];
  /** Inputs beside the fields, by name: a place, an area. */
  more?: readonly string[];
  /** What stands above everything, and beside or above the fields while they are filled in. */
  top?: ReactNode;
  picture?: ReactNode;
  /** What stands before the first group. */
  before?: ReactNode;
  /** What stands after the first group, given what was typed and what is wrong with it. */
  afterFirst?: (typed: Typed, errorOf: (name: string) => string | null) => ReactNode;
  /** What is read from it so far, beside the form. */
  beside?: (typed: Typed) => ReactNode;
  words: { save: string; hidden: ReactNode };
}

/** A record's form. It works before its script does; with it, what is typed is read back at once beside it. */
export function RecordForm({
  save,
  first,
  units,
  groups,
  more = [],
  top,
  picture = null,
  before,
  afterFirst,
  beside,
  words,
}: RecordFormProps) {
  const [state, send] = useActionState<RecordState, FormData>(save, first);
  const fields = groups.flatMap((group) => group.fields);
  const [live, setLive] = useState<{ of: RecordState; typed: Typed } | null>(null);
  const typed = useDeferredValue(live !== null && live.of === state ? live.typed : state.typed);
  const errorOf = errors(state);
  const problems = state.outcome === 'refused' ? state.problems : [];
  const follow = (event: FormEvent<HTMLFormElement>) =>
    setLive({ of: state, typed: typedIn(new FormData(event.currentTarget), fields, more) });
  const input = (field: Field) => (
    <FieldInput
      key={field.path}
      field={field}
      units={units}
      text={state.typed[field.path] ?? ''}
      error={errorOf(field.path)}
    />
  );
  return (
    <form
      action={send}
      className="grow"
      noValidate
      key={JSON.stringify([state.outcome, state.typed, state.version])}
      onInput={follow}
    >
      {problems.length > 0 && (
        <div tabIndex={-1} ref={toFront}>
          <ProblemList problems={problems} />
        </div>
      )}
      {TOLD[state.outcome] !== undefined && (
        <p role="status" className="problem-list" tabIndex={-1} ref={toFront}>
          {TOLD[state.outcome]}
        </p>
      )}
      <input type="hidden" name="version" value={state.version ?? ''} />
      <input type="hidden" name="base" value={JSON.stringify(state.base)} />
      {words.hidden}
      {top}
      <div className={beside === undefined ? '' : picture === null ? 'cols' : 'cols pictured'}>
        {picture}
        <div>
          {before}
          {groups.map(({ title, aside, fields: own }, i) => (
            <Fragment key={title}>
              <section>
                <SectionHead title={title} {...(aside !== undefined && { aside })} />
                <div className="two">{own.map(input)}</div>
              </section>
              {i === 0 && afterFirst?.(state.typed, errorOf)}
            </Fragment>
          ))}
        </div>
        {beside !== undefined && <div className="beside">{beside(typed)}</div>}
      </div>
      <ActionBar>
        <ActionButton name="intent" value="save">
          {words.save}
        </ActionButton>
        {beside !== undefined && (
          <ActionButton second name="intent" value="read">
            Read it back
          </ActionButton>
        )}
      </ActionBar>
    </form>
  );
}

function errors(state: RecordState): (name: string) => string | null {
  if (state.outcome === 'refused') return (name) => state.problems.find(({ path }) => path === name)?.says ?? null;
  if (state.outcome !== 'stale') return () => null;
  const { now, typed } = state;
  return (name) =>
    (now[name] ?? '') === (typed[name] ?? '') ? null : `Somebody else has saved “${now[name] || 'nothing'}” here.`;
}

const TOLD: Partial<Record<RecordState['outcome'], string>> = {
  read: 'Read as it stands beside the form. Nothing is saved yet.',
  same: 'Everything stands so already: nothing was changed.',
  stale:
    'Somebody else has saved in between. What they changed and you did not is taken over; where both did, theirs stands under the field. Send again to put yours.',
  away: 'The register’s database does not answer. Nothing was saved; what you typed stands below.',
  'signed-out': SIGNED_OUT,
};

const toFront = (element: HTMLElement | null) => element?.focus();
