import type { FaultTimes } from '@/lib/register/queries/fault-times';
import { lastedText } from '../lasted';
import { DataTable } from '../look/data-table';

/** How often and how long the sets of each area stood. */
export function TimeTable({ times }: { times: readonly FaultTimes[] }) {
  return (
    <DataTable name="From fault to running, by area">
      <thead>
        <tr>
          <th>Area</th>
          <th className="num">Faults</th>
          <th className="num">Half were over in</th>
          <th className="num">Longest</th>
        </tr>
      </thead>
      <tbody>
        {times.map(({ area, count, medianMs, longestMs }) => (
          <tr key={area ?? ''}>
            <td>
              <bdi>{area ?? 'not told'}</bdi>
            </td>
            <td className="num">{count}</td>
            <td className="num">{lastedText(medianMs)}</td>
            <td className="num">{lastedText(longestMs)}</td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
