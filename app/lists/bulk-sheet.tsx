import type { ReactNode } from 'react';
import type { Field, Units } from '@/lib/fields/field';
import type { FormProblem } from '@/lib/fields/read-form';
import type { Edit } from '@/lib/fields/state';
import type { Preview } from '@/lib/register/queries/preview-changes';
import { ActionButton } from '../look/action';
import { ProblemList } from '../look/problem-list';
import { SectionHead } from '../look/section-head';
import { FieldInput } from '../record/field-input';
import type { Query } from './asked-for';
import { NOT_KNOWN } from './bulk-asked';
import { ChangeManyForm } from './change-many-form';
import { PreviewTable } from './preview-table';

/** A change of many records: first what, then what it would do to each, then the word that makes it. */
export function BulkSheet({
  thing,
  query,
  fields,
  units,
  more,
  edit,
  problems,
  previews,
  chosen,
  all,
  back,
  name,
}: {
  thing: 'set' | 'motor';
  query: Query;
  fields: readonly Field[];
  units: Units;
  /** Inputs beside the fields. */
  more?: ReactNode;
  edit: Edit;
  problems: readonly FormProblem[];
  /** Null until a change is told. */
  previews: readonly Preview[] | null;
  chosen: number;
  all: number;
  back: string;
  name: (path: string, value: string) => string;
}) {
  const changed = (previews ?? []).filter(({ change }) => change !== null);
  const wrong = changed.filter(({ problems: found }) => found.length > 0);
  const textOf = (path: string) => {
    const value = query[path];
    return Array.isArray(value) ? value.join(',') : (value ?? '');
  };
  return (
    <>
      <p className="mt-2">
        {chosen === 1 ? `One ${thing} is chosen` : `${chosen} ${thing}s are chosen`}
        {all > chosen && `; ${all} are asked for, and no more than ${chosen} are changed at once`}. An empty field
        leaves each as it is; {NOT_KNOWN} makes it not known.
      </p>
      <ProblemList problems={problems} />
      <form>
        {Object.entries(query).flatMap(([key, value]) =>
          fields.some(({ path }) => path === key) || key === 'where'
            ? []
            : (Array.isArray(value) ? value : [value]).map((one) => (
                <input key={`${key} ${one}`} type="hidden" name={key} value={one ?? ''} />
              )),
        )}
        {more}
        <div className="two">
          {fields.map((field) => (
            <FieldInput
              key={field.path}
              field={field}
              units={units}
              empty="as it is"
              text={textOf(field.path)}
              error={problems.find(({ path }) => path === field.path)?.says ?? null}
            />
          ))}
        </div>
        <div className="mt-3 grid">
          <ActionButton second>Show what changes</ActionButton>
        </div>
      </form>
      {previews !== null && (
        <>
          <SectionHead
            title="What changes"
            aside={`${changed.length} change, ${previews.length - changed.length} stand so already`}
          />
          {changed.length === 0 ? (
            <p className="pt-3">Nothing: every one stands so already.</p>
          ) : (
            <PreviewTable previews={previews} fields={fields} units={units} name={name} />
          )}
          {wrong.length > 0 && (
            <p className="problem-list" role="alert">
              {wrong.length === 1 ? 'One cannot stand so' : `${wrong.length} cannot stand so`}: all are changed or none.
              Choose anew without them, or tell something else.
            </p>
          )}
          {changed.length > 0 && wrong.length === 0 && (
            <ChangeManyForm
              thing={thing}
              edit={edit}
              records={changed.map(({ id, version }) => [id, version])}
              path={back}
              words={changed.length === 1 ? 'Change it' : `Change all ${changed.length}`}
            />
          )}
        </>
      )}
    </>
  );
}
