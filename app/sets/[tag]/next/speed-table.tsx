import { DataTable } from '@/app/look/data-table';
import type { NextFailureRow } from '@/lib/energy/next-failure/next-failure';
import { figure } from '@/lib/units/figure';
import { MOMENT_WORDS, motorText } from './row-words';
import { NOT_KNOWN, rangeText } from './shown';

/** So much faster a better motor may run: a step that is easily scaled. */
const FASTER_RPM = 10;

/** What the motor's own speed asks more of the shaft: a better motor slips less and so runs faster. */
export function SpeedTable({ rows }: { rows: readonly NextFailureRow[] }) {
  return (
    <DataTable name="What its speed takes">
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Motor</th>
          <th scope="col" className="num">
            Shaft takes more, kW
          </th>
          <th scope="col" className="num">
            {FASTER_RPM} rpm faster take, kW
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.moment} ${row.motor.id} ${row.ieClass}`}>
            <th scope="row">{MOMENT_WORDS[row.moment]}</th>
            <td>
              <bdi>{motorText(row)}</bdi>
            </td>
            <td className="num">{rangeText(row.moreShaftKw, 3)}</td>
            <td className="num">
              {row.kwPerRpm.value === null ? NOT_KNOWN : figure(FASTER_RPM * row.kwPerRpm.value, 3)}
            </td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
