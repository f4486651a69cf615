import { Facts } from '@/app/look/facts';
import { momentText } from '@/app/moment';
import { type Measured, meanRead, type PerPhase } from '@/lib/energy/measured';
import { measuredOf } from '@/lib/energy/read-measured';
import type { KnownMeasurement } from '@/lib/register/queries/measurements';
import { unevenPct } from '@/lib/review/as-measured';
import { figure } from '@/lib/units/figure';

/** What was read at a set, newest first. */
export function MeasurementList({ list, timezone }: { list: readonly KnownMeasurement[]; timezone: string }) {
  return (
    <ol className="history">
      {list.map((one) => (
        <li key={one.measurementId}>
          <p className="label">
            {momentText(one.at, timezone)}, <bdi>{one.by}</bdi>
            {one.motor === null ? ', no motor in the set' : ', motor '}
            {one.motor !== null && <bdi>{one.motor}</bdi>}
          </p>
          <Facts rows={rowsOf(measuredOf(one.figures))} />
          {one.note !== null && (
            <p className="pt-2">
              “<bdi>{one.note}</bdi>”
            </p>
          )}
        </li>
      ))}
    </ol>
  );
}

function rowsOf(read: Measured) {
  const { volts, amps, inputKw, powerFactor, rpm, hertz } = read;
  return [
    ...linesOf('Volts', volts, ['L1-L2', 'L2-L3', 'L3-L1'], 'V'),
    ...linesOf('Amps', amps, ['L1', 'L2', 'L3'], 'A'),
    ...told('Input power', inputKw, 'kW'),
    ...told('Power factor', powerFactor, ''),
    ...told('Speed', rpm, 'rpm'),
    ...told('Drive shows', hertz, 'Hz'),
  ];
}

function linesOf(label: string, of: PerPhase, names: readonly string[], unit: string) {
  const mean = meanRead(of);
  if (mean === null) return [];
  const uneven = unevenPct(of);
  const each = of.flatMap((one, i) => (one === null ? [] : [`${names[i]} ${figure(one, 2)} ${unit}`]));
  const sum = uneven === null ? [] : [`mean ${figure(mean, 1)} ${unit}`, `uneven by ${figure(uneven, 1)} %`];
  const value = [...each, ...sum].map((text) => (
    <span key={text} className="block nowrap">
      {text}
    </span>
  ));
  return [{ label, value }];
}

const told = (label: string, value: number | null, unit: string) =>
  value === null ? [] : [{ label, value: `${figure(value, 3)}${unit === '' ? '' : ` ${unit}`}` }];
