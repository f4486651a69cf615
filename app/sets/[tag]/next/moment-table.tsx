import { DataTable } from '@/app/look/data-table';
import type { NextFailureRow } from '@/lib/energy/next-failure/next-failure';
import type { RunningAtDuty } from '@/lib/energy/running-at-duty';
import { MOMENT_WORDS, motorText } from './row-words';
import { rangeText, workedText } from './shown';

/** One row a moment and motor: what it takes in a year, and how long the set stands until then. */
export function MomentTable({
  now,
  motor,
  rows,
  money,
}: {
  now: RunningAtDuty;
  motor: string;
  rows: readonly NextFailureRow[];
  money: string;
}) {
  return (
    <DataTable name="The next failure">
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Motor</th>
          <th scope="col" className="num">
            kWh a year
          </th>
          <th scope="col" className="num">
            {money} a year
          </th>
          <th scope="col" className="num">
            Hours down
          </th>
          <th scope="col" className="num">
            Efficiency, %
          </th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">As it runs</th>
          <td>
            <bdi>{motor}</bdi>
          </td>
          <td className="num">{workedText(now.kwhPerYear)}</td>
          <td className="num">{workedText(now.moneyPerYear)}</td>
          <td className="num">–</td>
          <td className="num">{workedText(now.ratedEfficiencyPct, 1)}</td>
        </tr>
        {rows.map((row) => (
          <tr key={`${row.moment} ${row.motor.id} ${row.ieClass}`}>
            <th scope="row">{MOMENT_WORDS[row.moment]}</th>
            <td>
              <bdi>{motorText(row)}</bdi>
            </td>
            <td className="num">{rangeText(row.kwhPerYear)}</td>
            <td className="num">{rangeText(row.moneyPerYear)}</td>
            <td className="num">{rangeText(row.hoursDown, 2)}</td>
            <td className="num">{rangeText(row.ratedEfficiencyPct, 1)}</td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
