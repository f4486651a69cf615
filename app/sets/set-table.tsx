import Link from 'next/link';
import type { SetFilter } from '@/lib/register/set-filter';
import type { SetLine } from '@/lib/register/set-line';
import { LIST_NAMES, type Query, questionWith } from '../lists/asked-for';
import { LabelsOfChosen } from '../lists/labels-of-chosen';
import { SortHead } from '../lists/sort-head';
import { ActionButton } from '../look/action';
import { DataTable } from '../look/data-table';
import { momentText } from '../moment';
import { motorPath, setPath } from '../paths';

/** The sets as a table at a desk; some of them, or all that are asked for, can be changed together. */
export function SetTable({
  sets,
  query,
  filter,
  all,
  mayEdit,
  timezone,
}: {
  sets: readonly SetLine[];
  query: Query;
  filter: SetFilter;
  all: number;
  mayEdit: boolean;
  timezone: string;
}) {
  const sorted = { path: '/sets', query, now: filter } as const;
  return (
    <form action="/sets/bulk" className="at-desk">
      {LIST_NAMES['/sets'].map((name) => {
        const value = query[name];
        return (
          typeof value === 'string' && value !== '' && <input key={name} type="hidden" name={name} value={value} />
        );
      })}
      <DataTable name="Sets">
        <thead>
          <tr>
            <th scope="col" className="screen-only">
              <span className="vh">Chosen</span>
            </th>
            <SortHead {...sorted} by="tag">
              Tag
            </SortHead>
            <th scope="col">Serves</th>
            <SortHead {...sorted} by="area">
              Area
            </SortHead>
            <SortHead {...sorted} by="criticality">
              Crit.
            </SortHead>
            <th scope="col">Motor</th>
            <th scope="col">Frame</th>
            <SortHead {...sorted} by="changed">
              Changed
            </SortHead>
          </tr>
        </thead>
        <tbody>
          {sets.map((set) => (
            <tr key={set.setId} className={set.failedAt === null ? undefined : 'act'}>
              <td className="pick screen-only">
                <label>
                  <input type="checkbox" name="id" value={set.setId} />
                  <span className="vh">Choose {set.tag}</span>
                </label>
              </td>
              <td className="id">
                <Link href={setPath(set.tag)}>
                  <bdi>{set.tag}</bdi>
                </Link>
              </td>
              <td>
                <bdi>{[set.service, set.pump].filter((part) => part !== null).join(', ') || 'not told'}</bdi>
                {set.failedAt !== null && (
                  <>
                    {' '}
                    <b>Failed</b>
                  </>
                )}
              </td>
              <td>
                <bdi>{set.area ?? '–'}</bdi>
              </td>
              <td className="num">{set.criticality ?? '–'}</td>
              <td>
                {set.motorNumber === null ? (
                  'none'
                ) : (
                  <Link className="to" href={motorPath(set.motorNumber)}>
                    <bdi>{set.motorNumber}</bdi>
                  </Link>
                )}
              </td>
              <td>
                <bdi>{set.frame ?? '–'}</bdi>
              </td>
              <td className="dim">{momentText(set.changedAt, timezone)}</td>
            </tr>
          ))}
        </tbody>
      </DataTable>
      <p className="below-table screen-only">
        {mayEdit && (
          <>
            <ActionButton second>Change the chosen</ActionButton>
            <Link className="to" href={`/sets/bulk${questionWith('/sets', query, {})}`}>
              Change all {all}
            </Link>
          </>
        )}
        <button type="submit" className="second" formAction="/buy">
          One motor for the chosen
        </button>
        <LabelsOfChosen list="sets" />
      </p>
    </form>
  );
}
