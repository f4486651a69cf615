import Link from 'next/link';
import type { MotorLine } from '@/lib/register/queries/cover-of-motors';
import { type Query, questionWith } from '../../lists/asked-for';
import { DataTable } from '../../look/data-table';
import { untorn } from '../../look/untorn';
import { motorPath } from '../../paths';
import { ratingText } from '../../rating-text';
import { VerdictCells, VerdictHeads } from '../verdict-counts';

/** The shelf motors with the sets each could go into, and what is left if it is used tonight. */
export function MotorTable({ lines, query }: { lines: readonly MotorLine[]; query: Query }) {
  return (
    <DataTable name="Shelf motors and the sets they protect">
      <thead>
        <tr>
          <th scope="col">Motor</th>
          <th scope="col">Plate</th>
          <th scope="col">Where</th>
          <th scope="col" className="num">
            Alike
          </th>
          <VerdictHeads />
          <th scope="col" className="num">
            Sets
          </th>
          <th scope="col">Used tonight</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ motor, of, alike, sets, counts, leavesNone, leavesOne }) => (
          <tr key={of.motorId} className={leavesNone > 0 ? 'act' : undefined}>
            <td className="id">
              <Link href={motorPath(motor.id)}>
                <bdi>{motor.id}</bdi>
              </Link>
            </td>
            <td>
              <bdi>{untorn(ratingText(motor))}</bdi>
            </td>
            <td>
              <bdi>{[of.store, of.shelf].filter((part) => part !== null).join(', ') || 'not told'}</bdi>
            </td>
            <td className="num">{alike}</td>
            <VerdictCells counts={counts} />
            <td className="num">{sets.length === 0 ? <b>none</b> : sets.length}</td>
            <td>
              {sets.length === 0 ? (
                'no set misses it'
              ) : (
                <Link
                  className="to"
                  href={`/cover/motors${questionWith('/cover/motors', query, { used: motor.id })}#used`}
                >
                  {leavesNone} with none, {leavesOne} with one
                  <span className="vh"> left, if {motor.id} is used</span>
                </Link>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
