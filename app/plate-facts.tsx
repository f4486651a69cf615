import { classificationText } from '@/lib/fields/classification-text';
import {
  AUXILIARY_WORDS,
  ENCLOSED_WORDS,
  KIND_WORDS,
  SIDE_WORDS,
  TURN_WORDS,
  WINDING_WORDS,
} from '@/lib/fields/plate-words';
import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { figure } from '@/lib/units/figure';
import { DataTable } from './look/data-table';
import { Facts, Figures } from './look/facts';

/** The six figures of a plate that tell one motor from another, `row` being the rating that matters here. */
export function PlateFigures({ motor, row = motor.ratings[0] ?? null }: { motor: Motor; row?: Rating | null }) {
  return (
    <Figures
      cells={[
        { label: 'Frame', value: motor.frame },
        { label: 'Output', ...outputOf(row) },
        { label: 'Speed', value: row === null ? null : text(row.rpm), unit: 'rpm' },
        { label: 'Volts', value: row === null ? null : voltsText(row), unit: 'V' },
        { label: 'Plate current', value: row === null ? null : text(row.amps), unit: 'A' },
        { label: 'Enclosure', value: motor.ip ?? motor.enclosure },
      ]}
    />
  );
}

/** Everything on the plate: its rating rows, then its other marks. What it does not tell is not listed. */
export function PlateFacts({ motor }: { motor: Motor }) {
  return (
    <>
      {motor.ratings.length > 0 && <RatingTable ratings={motor.ratings} />}
      <Facts rows={marksOf(motor)} />
    </>
  );
}

function RatingTable({ ratings }: { ratings: readonly Rating[] }) {
  return (
    <DataTable name="Ratings on the plate">
      <thead>
        <tr>
          <th scope="col">Output</th>
          <th scope="col" className="num">
            V
          </th>
          <th scope="col" className="num">
            Hz
          </th>
          <th scope="col" className="num">
            rpm
          </th>
          <th scope="col" className="num">
            A
          </th>
          <th scope="col" className="num">
            Eff., %
          </th>
        </tr>
      </thead>
      <tbody>
        {ratings.map((row) => (
          <tr key={JSON.stringify(row)}>
            <td className="dim">{outputText(row) ?? '?'}</td>
            <td className="num">{voltsText(row) ?? '?'}</td>
            <td className="num">{text(row.hertz) ?? '?'}</td>
            <td className="num">{text(row.rpm) ?? '?'}</td>
            <td className="num">{text(row.amps) ?? '?'}</td>
            <td className="num">{text(row.efficiencyPct) ?? '?'}</td>
          </tr>
        ))}
      </tbody>
    </DataTable>
  );
}

function marksOf(motor: Motor) {
  const marks: [string, string | null][] = [
    ['Frame', motor.frame],
    ['Mounting', motor.mounting],
    ['Kind', motor.kind === null ? null : KIND_WORDS[motor.kind]],
    ['Phases', text(motor.phases)],
    ['Poles', text(motor.poles)],
    ['Leads', text(motor.leads)],
    ['Winding', motor.winding === null ? null : WINDING_WORDS[motor.winding]],
    ['Connection', connectionText(motor.ratings)],
    ['Power factor', text(motor.ratings[0] === undefined ? null : motor.ratings[0].pf)],
    ['Service factor', text(motor.serviceFactor)],
    ['Design', motor.design],
    ['Code letter', motor.codeLetter],
    ['Locked-rotor torque', withUnit(motor.lockedRotorPct, '%')],
    ['Breakdown torque', withUnit(motor.breakdownPct, '%')],
    ['Enclosure', enclosureText(motor)],
    ['Insulation class', motor.insulation],
    ['Ambient on the plate', withUnit(motor.ambientC, '°C')],
    ['Duty', motor.duty],
    ['Duty on a drive', motor.driveDuty],
    ['Constant torque down to', motor.constantTorqueRange === null ? null : `1 : ${figure(motor.constantTorqueRange)}`],
    ['Greatest speed', withUnit(motor.maxRpm, 'rpm')],
    ['Terminal box', motor.terminalBox === null ? null : SIDE_WORDS[motor.terminalBox]],
    ['Turns', motor.rotation === null ? null : TURN_WORDS[motor.rotation]],
    ['Washdown', motor.washdown === null ? null : ENCLOSED_WORDS[motor.washdown]],
    ['Classification', motor.classification === null ? null : classificationText(motor.classification)],
    ['Has', hasText(motor)],
    ['Brake', brakeText(motor)],
    ['Mass', withUnit(motor.massKg, 'kg')],
    ['Length', withUnit(motor.lengthMm, 'mm')],
  ];
  return marks.flatMap(([label, value]) => (value === null ? [] : [{ label, value: <bdi>{value}</bdi> }]));
}

const text = (value: number | null) => (value === null ? null : figure(value));
const withUnit = (value: number | null, unit: string) => (value === null ? null : `${figure(value)} ${unit}`);

function outputOf(row: Rating | null): { value: string | null; unit?: string } {
  if (row === null) return { value: null };
  return row.hp === null ? { value: text(row.kw), unit: 'kW' } : { value: text(row.hp), unit: 'hp' };
}

/** The power as it stands on the plate: "5 hp" or "3.7 kW". */
export function outputText(row: Rating): string | null {
  const { value, unit } = outputOf(row);
  return value === null ? null : `${value} ${unit}`;
}

function voltsText({ volts, voltsMin, voltsMax }: Rating): string | null {
  if (voltsMin !== null && voltsMax !== null) return `${figure(voltsMin)}–${figure(voltsMax)}`;
  return text(volts);
}

function connectionText(ratings: readonly Rating[]): string | null {
  const told = [...new Set(ratings.flatMap(({ connection }) => (connection === null ? [] : [connection])))];
  return told.length === 0 ? null : told.join(', ');
}

function enclosureText({ enclosure, ip }: Motor): string | null {
  const told = [enclosure, ip].filter((mark) => mark !== null);
  return told.length === 0 ? null : told.join(', ');
}

function hasText({ has }: Motor): string | null {
  if (has === null) return null;
  return has.length === 0 ? 'no auxiliaries' : has.map((one) => AUXILIARY_WORDS[one]).join(', ');
}

function brakeText({ brake }: Motor): string | null {
  const told = [withUnit(brake.torqueNm, 'N·m'), withUnit(brake.volts, 'V')].filter((mark) => mark !== null);
  return told.length === 0 ? null : told.join(', ');
}
