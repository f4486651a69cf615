import Link from 'next/link';
import type { CoverFilter } from '@/lib/register/cover-filter';
import type { CoveredLine } from '@/lib/register/queries/cover-of-sets';
import type { Query } from '../lists/asked-for';
import { SortHead } from '../lists/sort-head';
import { DataTable } from '../look/data-table';
import { hoursText, VERDICT_WORDS } from '../look/words';
import { candidatesPath, motorPath } from '../paths';
import { VerdictCells, VerdictHeads } from './verdict-counts';

/** The sets with how many shelf motors could go in, and which of them best. */
export function CoverTable({
  lines,
  query,
  filter,
}: {
  lines: readonly CoveredLine[];
  query: Query;
  filter: CoverFilter;
}) {
  const sorted = { path: '/cover', query, now: filter } as const;
  return (
    <DataTable name="Cover of the sets">
      <thead>
        <tr>
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
          <VerdictHeads />
          <SortHead {...sorted} by="motors">
            In all
          </SortHead>
          <th scope="col">Best</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ of, counts, all, best }) => (
          <tr key={of.setId} className={all === 0 ? 'act' : undefined}>
            <td className="id">
              <Link href={candidatesPath(of.tag)}>
                <bdi>{of.tag}</bdi>
              </Link>
            </td>
            <td>
              <bdi>{[of.service, of.pump].filter((part) => part !== null).join(', ') || 'not told'}</bdi>
            </td>
            <td>
              <bdi>{of.area ?? '–'}</bdi>
            </td>
            <td className="num">{of.criticality ?? '–'}</td>
            <VerdictCells counts={counts} />
            <td className="num">{all === 0 ? <b>none</b> : all}</td>
            <td>
              {best === null ? (
                'nothing on the shelves'
              ) : (
                <>
                  <Link className="to" href={motorPath(best.motor.id)}>
                    <bdi>{best.motor.id}</bdi>
                  </Link>{' '}
                  {VERDICT_WORDS[best.fit.verdict].toLowerCase()},{' '}
                  <span className="nowrap">{hoursText(best.fit.hours)}</span>
                </>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
