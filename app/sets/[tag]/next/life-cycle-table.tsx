import { DataTable } from '@/app/look/data-table';
import type { LifeCycleCost } from '@/lib/energy/life-cycle-cost';
import type { NextFailureRow } from '@/lib/energy/next-failure/next-failure';
import { MOMENT_WORDS, motorText } from './row-words';
import { endsText } from './shown';

const PARTS: readonly { key: keyof LifeCycleCost; label: string }[] = [
  { key: 'purchase', label: 'Price' },
  { key: 'work', label: 'Work' },
  { key: 'downtime', label: 'Downtime' },
  { key: 'energy', label: 'Energy' },
  { key: 'total', label: 'Together' },
];

/** Present value over the years reckoned with, part by part. */
export function LifeCycleTable({ rows, money }: { rows: readonly NextFailureRow[]; money: string }) {
  return (
    <DataTable name={`Life-cycle cost, ${money}`}>
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Motor</th>
          {PARTS.map(({ key, label }) => (
            <th key={key} scope="col" className="num">
              {label}, {money}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.moment} ${row.motor.id} ${row.ieClass}`}>
            <th scope="row">{MOMENT_WORDS[row.moment]}</th>
            <td>
              <bdi>{motorText(row)}</bdi>
            </td>
            {PARTS.map(({ key }) => (
              <td key={key} className="num">
                {endsText(row.lifeCycle.low[key], row.lifeCycle.high[key])}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
