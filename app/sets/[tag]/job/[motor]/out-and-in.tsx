import { Tag } from '@/app/look/tag';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';

/** What comes out and what goes in, side by side, each by its rating at this supply. */
export function OutAndIn({ set, motor, where }: { set: PumpSet; motor: Motor; where: React.ReactNode }) {
  const both = [set.failed, motor];
  const facts = both.map((one) => (one === null ? null : factsOf(set, one)));
  return (
    <table className="out-in">
      <caption className="vh">What comes out and what goes in</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">Comes out</th>
          <th scope="col">Goes in</th>
        </tr>
      </thead>
      <tbody>
        <tr>
          <th scope="row">Motor</th>
          {both.map((one, i) => (
            <td key={i === 0 ? 'out' : 'in'}>{one === null ? 'no motor' : <Tag>{one.id}</Tag>}</td>
          ))}
        </tr>
        {ROWS.map((name, row) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {facts.map((column, i) => (
              <td key={i === 0 ? 'out' : 'in'}>{column === null ? '–' : column[row]}</td>
            ))}
          </tr>
        ))}
        <tr>
          <th scope="row">Where it is</th>
          <td>in the set</td>
          <td>{where}</td>
        </tr>
      </tbody>
    </table>
  );
}

const ROWS = ['Frame, mounting', 'Power, speed', 'Volts, amps', 'Mass to lift'] as const;

function factsOf(set: PumpSet, motor: Motor): string[] {
  const { plate } = ratingRowOf(set, motor);
  return [
    told([motor.frame, motor.mounting]),
    told([withUnit(plate?.hp, 'hp'), withUnit(plate?.kw, 'kW'), withUnit(plate?.rpm, 'rpm')]),
    told([withUnit(plate?.volts, 'V'), withUnit(plate?.amps, 'A')]),
    told([withUnit(motor.massKg, 'kg')]),
  ];
}

const withUnit = (value: number | null | undefined, unit: string) =>
  value === null || value === undefined ? null : `${figure(value)} ${unit}`;
const told = (parts: readonly (string | null)[]) => parts.filter((part) => part !== null).join(', ') || 'not told';
