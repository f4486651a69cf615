import type { Field, Units } from '@/lib/fields/field';
import type { Edit, State } from '@/lib/fields/state';
import type { Preview } from '@/lib/register/queries/preview-changes';
import { DataTable } from '../look/data-table';

/** More lines than anybody reads before saying yes; the counts tell the rest. */
const SHOWN = 200;

/** What a change of many records would do to each: from what to what, or why not. */
export function PreviewTable({
  previews,
  fields,
  units,
  name,
}: {
  previews: readonly Preview[];
  fields: readonly Field[];
  units: Units;
  name: (path: string, value: string) => string;
}) {
  const told = previews.filter(({ change }) => change !== null);
  return (
    <>
      <DataTable name="What changes">
        <thead>
          <tr>
            <th scope="col">Which</th>
            <th scope="col">From</th>
            <th scope="col">To</th>
          </tr>
        </thead>
        <tbody>
          {told.slice(0, SHOWN).map(({ id, name: which, change, problems }) => (
            <tr key={id} className={problems.length > 0 ? 'act' : undefined}>
              <th scope="row" className="id">
                <bdi>{which}</bdi>
              </th>
              <td>
                <bdi>{wordsOf(change?.before ?? {}, fields, units, name)}</bdi>
              </td>
              <td>
                <bdi>{wordsOf(change?.after ?? {}, fields, units, name)}</bdi>
                {problems.map(({ path, says }) => (
                  <p key={path + says}>
                    <b>Not possible:</b> {path} {says}.
                  </p>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      </DataTable>
      {told.length > SHOWN && (
        <p className="label">
          The first {SHOWN} of {told.length} are shown.
        </p>
      )}
    </>
  );
}

/** The changed fields in the words and units that their form has; a place or an area by its name. */
function wordsOf(
  values: Edit,
  fields: readonly Field[],
  units: Units,
  name: (path: string, value: string) => string,
): string {
  const state = Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null)) as State;
  const parts = fields
    .filter(({ path }) => Object.keys(values).some((key) => key === path || key.startsWith(`${path}.`)))
    .map((field) => {
      const text = field.shown(state, units);
      const words = field.choices?.find(({ value }) => value === text)?.words ?? text;
      return `${field.label}: ${words === '' ? 'not known' : words}${words !== '' && field.unit ? ` ${field.unit[units]}` : ''}`;
    });
  const others = Object.entries(values)
    .filter(([path]) => !fields.some((field) => path === field.path || path.startsWith(`${field.path}.`)))
    .map(([path, value]) => (value === null ? null : name(path, String(value))))
    .filter((text) => text !== null);
  return [...parts, ...others].join('; ') || 'not told';
}
