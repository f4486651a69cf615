import Link from 'next/link';
import type { MotorFilter } from '@/lib/register/motor-filter';
import type { MotorLine } from '@/lib/register/queries/list-motors';
import { LIST_NAMES, type Query, questionWith } from '../lists/asked-for';
import { LabelsOfChosen } from '../lists/labels-of-chosen';
import { SortHead } from '../lists/sort-head';
import { ActionButton } from '../look/action';
import { DataTable } from '../look/data-table';
import { untorn } from '../look/untorn';
import { motorPath } from '../paths';
import { ratingText } from '../rating-text';
import { WhereaboutsText } from '../whereabouts-text';

/** The motors as a table; some of them, or all that are asked for, can be moved together. */
export function MotorTable({
  motors,
  query,
  filter,
  all,
  mayEdit,
}: {
  motors: readonly MotorLine[];
  query: Query;
  filter: MotorFilter;
  all: number;
  mayEdit: boolean;
}) {
  const sorted = { path: '/motors', query, now: filter } as const;
  return (
    <form action="/motors/bulk">
      {LIST_NAMES['/motors'].map((name) => {
        const value = query[name];
        return (
          typeof value === 'string' && value !== '' && <input key={name} type="hidden" name={name} value={value} />
        );
      })}
      <DataTable name="Motors">
        <thead>
          <tr>
            <th scope="col" className="screen-only">
              <span className="vh">Chosen</span>
            </th>
            <SortHead {...sorted} by="number">
              Number
            </SortHead>
            <th scope="col">Plate</th>
            <SortHead {...sorted} by="frame">
              Frame
            </SortHead>
            <th scope="col">Maker, serial</th>
            <SortHead {...sorted} by="place">
              Where
            </SortHead>
          </tr>
        </thead>
        <tbody>
          {motors.map(({ motorId, motor, maker, serial, whereabouts }) => (
            <tr key={motorId}>
              <td className="pick screen-only">
                <label>
                  <input type="checkbox" name="id" value={motorId} />
                  <span className="vh">Choose {motor.id}</span>
                </label>
              </td>
              <td className="id">
                <Link href={motorPath(motor.id)}>
                  <bdi>{motor.id}</bdi>
                </Link>
              </td>
              <td>{untorn(ratingText(motor))}</td>
              <td>
                <bdi>{motor.frame ?? '–'}</bdi>
              </td>
              <td>
                <bdi>{[maker, serial].filter((part) => part !== null).join(', ') || '–'}</bdi>
              </td>
              <td>
                <WhereaboutsText at={whereabouts} />
              </td>
            </tr>
          ))}
        </tbody>
      </DataTable>
      <p className="below-table screen-only">
        {mayEdit && (
          <>
            <ActionButton second>Move the chosen</ActionButton>
            <Link className="to" href={`/motors/bulk${questionWith('/motors', query, {})}`}>
              Move all {all}
            </Link>
          </>
        )}
        <LabelsOfChosen list="motors" />
      </p>
    </form>
  );
}
