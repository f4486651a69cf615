'use client';

import { type ReactNode, useActionState } from 'react';
import type { AskField, AskState, Typed } from './ask-state';
import { ActionButton } from './look/action';
import { Choice } from './look/choice';
import { Field, SelectField } from './look/field';
import { ProblemList } from './look/problem-list';
import { SIGNED_OUT } from './signed-out';

/**
 * A form of a few fields and one button. A client component, since only so is what was typed kept on a refusal; it
 * works before and without script too. `id` tells its fields from those of another form on the page.
 */
export function AskForm({
  id,
  action,
  fields,
  button,
  main,
  folded,
}: {
  id: string;
  action: (before: AskState, form: FormData) => Promise<AskState>;
  fields: readonly AskField[];
  button: ReactNode;
  main?: true;
  /** What opens the form; it stands open once it was sent. */
  folded?: ReactNode;
}) {
  const [state, send] = useActionState<AskState, FormData>(action, { outcome: 'asked' });
  if (state.outcome === 'told') return <Told says={state.says} secret={state.secret} />;
  const problems = state.outcome === 'refused' ? state.problems : [];
  const typed = 'typed' in state ? state.typed : null;
  const says = state.outcome === 'saved' ? state.says : SAYS[state.outcome];
  const form = (
    <form action={send} noValidate key={JSON.stringify(state)} id={id}>
      {problems.length > 0 && (
        <div tabIndex={-1} ref={toFront}>
          <ProblemList problems={problems.map(({ path, says }) => ({ path: idOf(id, path, fields), says }))} />
        </div>
      )}
      {says !== undefined && (
        <p role="status" className="problem-list" tabIndex={-1} ref={toFront}>
          {says}
        </p>
      )}
      {fields.map((field) => (
        <Asked
          key={field.name}
          id={id}
          field={field}
          typed={typed}
          error={problems.find(({ path }) => path === field.name)?.says ?? null}
        />
      ))}
      <div className="mt-3 grid">
        {main ? <ActionButton>{button}</ActionButton> : <ActionButton second>{button}</ActionButton>}
      </div>
    </form>
  );
  if (folded === undefined) return form;
  return (
    <details open={state.outcome !== 'asked'}>
      <summary className="more">{folded}</summary>
      {form}
    </details>
  );
}

function Asked({
  id,
  field,
  typed,
  error,
}: {
  id: string;
  field: AskField;
  typed: Typed | null;
  error: string | null;
}) {
  const before = typed?.[field.name];
  const one = before?.[0];
  switch (field.kind) {
    case 'hidden':
      return <input type="hidden" name={field.name} value={field.value} />;
    case 'ticks':
      return (
        <Choice
          legend={field.label}
          name={field.name}
          kind="many"
          options={field.options}
          chosen={before ?? field.values}
          error={error}
        />
      );
    case 'list': {
      const { kind: _kind, value, ...rest } = field;
      return <SelectField {...rest} id={`${id}-${field.name}`} defaultValue={one ?? value ?? null} error={error} />;
    }
    default: {
      const { kind, value, ...rest } = field;
      return (
        <Field
          {...rest}
          id={`${id}-${field.name}`}
          type={kind === 'figure' ? 'text' : kind}
          {...(kind === 'figure' && { inputMode: 'numeric' as const })}
          defaultValue={one ?? value ?? null}
          maxLength={300}
          error={error}
        />
      );
    }
  }
}

/** A link or token, this once. The form is gone, so that nothing of it is sent again. */
function Told({ says, secret }: { says: string; secret: string }) {
  return (
    <div tabIndex={-1} ref={toFront}>
      <p className="pt-3">
        <b>Shown this once</b>
      </p>
      <output className="in mt-2 block select-all break-all" aria-label="Shown this once">
        {secret}
      </output>
      <p className="hint label pt-1">{says}</p>
    </div>
  );
}

/** A problem of no field of its own leads to the form. */
function idOf(id: string, path: string, fields: readonly AskField[]): string {
  const field = fields.find(({ name }) => name === path);
  if (field === undefined || field.kind === 'hidden') return id;
  return field.kind === 'ticks' ? field.name : `${id}-${field.name}`;
}

const SAYS: Partial<Record<AskState['outcome'], string>> = {
  away: 'The register’s database does not answer. Nothing was saved; send it again in a minute.',
  'signed-out': SIGNED_OUT,
};

const toFront = (element: HTMLElement | null) => element?.focus();
