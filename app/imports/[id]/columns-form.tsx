'use client';

import { useActionState, useState } from 'react';
import { ActionButton } from '../../look/action';
import { Choice } from '../../look/choice';
import { DataTable } from '../../look/data-table';
import { Field, SelectField } from '../../look/field';
import { SectionHead } from '../../look/section-head';
import { confirmHere } from './confirm-here';

export interface ShownColumn {
  index: number;
  /** As a spreadsheet calls it: A, B ... */
  letter: string;
  heading: string;
  examples: string[];
  field: string;
  /** Units that its figures may be in, with the one taken for those that carry none. */
  unit: string;
  because: string;
}

/** Which column means what: as it was found, to be confirmed or put right. What was chosen stays on a refusal. */
export function ColumnsForm({
  runId,
  kind,
  columns,
  fields,
  units,
  told,
}: {
  runId: string;
  kind: 'sets' | 'motors';
  columns: readonly ShownColumn[];
  fields: readonly { value: string; words: string }[];
  /** By field: the units its figures can be in. */
  units: Readonly<Record<string, readonly string[]>>;
  told: { mounting: string; area: string; store: string; makePlaces: boolean; keepUnknownWords: boolean };
}) {
  const [state, send] = useActionState(confirmHere, null);
  const typed = (name: string, before: string) => state?.typed[name] ?? before;
  const ticked = (name: string, before: boolean) =>
    (state === null ? before : state.typed[name] === 'yes') ? ['yes'] : [];
  return (
    <form action={send} key={JSON.stringify(state)}>
      <input type="hidden" name="run" value={runId} />
      {state !== null && (
        <div className="problem-list" role="alert" tabIndex={-1} ref={(element) => element?.focus()}>
          {state.says.map((says) => (
            <p key={says}>{says}</p>
          ))}
        </div>
      )}
      <DataTable name="Columns">
        <thead>
          <tr>
            <th scope="col">Column</th>
            <th scope="col">What stands in it</th>
            <th scope="col">Is</th>
            <th scope="col">Bare figures in</th>
          </tr>
        </thead>
        <tbody>
          {columns.map((column) => (
            <ColumnRow
              key={column.index}
              column={column}
              field={typed(`column-${column.index}`, column.field)}
              unit={typed(`unit-${column.index}`, column.unit)}
              fields={fields}
              units={units}
            />
          ))}
        </tbody>
      </DataTable>
      <SectionHead title="For rows that say nothing themselves" />
      <div className="two">
        {kind === 'sets' ? (
          <>
            <SelectField
              label="The set holds its motor by"
              name="mounting"
              empty="each row must tell"
              defaultValue={typed('mounting', told.mounting)}
              options={[
                { value: 'foot', words: 'feet' },
                { value: 'face', words: 'a face' },
                { value: 'foot-and-face', words: 'feet and a face' },
              ]}
            />
            <Field label="Area" name="area" defaultValue={typed('area', told.area)} maxLength={80} required={false} />
          </>
        ) : (
          <Field label="Store" name="store" defaultValue={typed('store', told.store)} maxLength={80} required={false} />
        )}
      </div>
      <Choice
        legend={kind === 'sets' ? 'Areas that are not there yet' : 'Stores and shelves that are not there yet'}
        name="makePlaces"
        kind="many"
        chosen={ticked('makePlaces', told.makePlaces)}
        options={[{ value: 'yes', words: 'are made by the import' }]}
      />
      <Choice
        legend="Frames, enclosures and codes not known here"
        name="keepUnknownWords"
        kind="many"
        chosen={ticked('keepUnknownWords', told.keepUnknownWords)}
        options={[{ value: 'yes', words: 'are kept as they stand, and said' }]}
      />
      <div className="mt-3 grid">
        <ActionButton>Look at every row</ActionButton>
      </div>
    </form>
  );
}

function ColumnRow({
  column: { index, letter, heading, examples, because },
  field,
  unit,
  fields,
  units,
}: {
  column: ShownColumn;
  field: string;
  unit: string;
  fields: readonly { value: string; words: string }[];
  units: Readonly<Record<string, readonly string[]>>;
}) {
  const [chosen, choose] = useState(field);
  const could = units[chosen] ?? [];
  return (
    <tr>
      <th scope="row">
        <span className="label">{letter}</span> <bdi>{heading || 'no heading'}</bdi>
      </th>
      <td className="examples">
        <bdi>{examples.join(' · ') || 'nothing'}</bdi>
      </td>
      <td>
        <select
          className="in"
          name={`column-${index}`}
          value={chosen}
          onChange={(event) => choose(event.target.value)}
          aria-label={`What column ${letter} is`}
        >
          <option value="">leave it out</option>
          {fields.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>{' '}
        <span className="label">{because}</span>
      </td>
      <td>
        {could.length > 0 && (
          <select
            className="in"
            name={`unit-${index}`}
            key={chosen}
            defaultValue={could.includes(unit) ? unit : ''}
            aria-label={`Unit of column ${letter}`}
          >
            <option value="">as the cell says</option>
            {could.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </select>
        )}
      </td>
    </tr>
  );
}
