import { DataTable } from '@/app/look/data-table';
import type { ClassCostsAtLoad } from '@/lib/energy/class-costs';
import { IE_CLASSES } from '@/lib/plant/site-settings';
import { figure } from '@/lib/units/figure';
import { workedText } from './shown';

/** What a motor of this rating takes in a year at part load, class by class. */
export function ClassTable({ costs, money }: { costs: readonly ClassCostsAtLoad[]; money: string }) {
  return (
    <DataTable name="A year at part load, by class">
      <thead>
        <tr>
          <th scope="col">Load</th>
          {IE_CLASSES.map((ieClass) => (
            <th key={ieClass} scope="col" className="num">
              {ieClass}: %, kWh, {money}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {costs.map(({ loadPct, classes }) => (
          <tr key={loadPct}>
            <th scope="row">{figure(loadPct, 0)} %</th>
            {classes.map((one) => (
              <td key={one.ieClass} className="num">
                {workedText(one.efficiencyPct, 1)}
                <span className="block">{workedText(one.kwhPerYear)}</span>
                <span className="block">{workedText(one.moneyPerYear)}</span>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}
