import { DataTable } from '@/app/look/data-table';
import type { ClassCost, ClassCostsAtLoad } from '@/lib/energy/class-costs';
import { IE_CLASSES } from '@/lib/plant/site-settings';
import { figure } from '@/lib/units/figure';
import { NOT_KNOWN, workedText } from './shown';

/** What a motor of this rating takes in a year at part load, class by class. */
export function ClassTable({ costs, money }: { costs: readonly ClassCostsAtLoad[]; money: string }) {
  return (
    <DataTable name="A year at part load, by class">
      <thead>
        <tr>
          <th scope="col">Load</th>
          {IE_CLASSES.map((ieClass) => (
            <th key={ieClass} scope="col" className="num">
              {ieClass}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {costs.map(({ loadPct, classes }) => (
          <tr key={loadPct}>
            <th scope="row">{figure(loadPct, 1)} %</th>
            {classes.map((one) => (
              <td key={one.ieClass} className="num">
                <ClassCell cost={one} money={money} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}

/** Its efficiency, and what it takes, each with its unit; what is not known of a class is said once. */
function ClassCell({ cost: { efficiencyPct, kwhPerYear, moneyPerYear }, money }: { cost: ClassCost; money: string }) {
  const told = [
    { of: efficiencyPct, text: `${workedText(efficiencyPct, 1)} %` },
    { of: kwhPerYear, text: `${workedText(kwhPerYear)} kWh` },
    { of: moneyPerYear, text: `${workedText(moneyPerYear)} ${money}` },
  ].filter(({ of }) => of.value !== null);
  if (told.length === 0) return NOT_KNOWN;
  return told.map(({ text }) => (
    <span key={text} className="block">
      {text}
    </span>
  ));
}
