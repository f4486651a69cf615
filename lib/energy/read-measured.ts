import { readNumber } from '@/lib/units/read-number';
import type { Measured } from './measured';

/** The figures that can be told of a running set, each with its unit and the bounds within which it is read. */
export const MEASURED_FIELDS = [
  { name: 'voltsL1L2', label: 'Volts L1-L2', unit: 'V', min: 20, max: 15_000 },
  { name: 'voltsL2L3', label: 'Volts L2-L3', unit: 'V', min: 20, max: 15_000 },
  { name: 'voltsL3L1', label: 'Volts L3-L1', unit: 'V', min: 20, max: 15_000 },
  { name: 'ampsL1', label: 'Amps L1', unit: 'A', min: 0, max: 5_000 },
  { name: 'ampsL2', label: 'Amps L2', unit: 'A', min: 0, max: 5_000 },
  { name: 'ampsL3', label: 'Amps L3', unit: 'A', min: 0, max: 5_000 },
  { name: 'inputKw', label: 'Input power', unit: 'kW', min: 0, max: 10_000 },
  { name: 'powerFactor', label: 'Power factor', unit: '', min: 0.01, max: 1 },
  { name: 'rpm', label: 'Speed of the motor', unit: 'rpm', min: 10, max: 20_000 },
  { name: 'hertz', label: 'Hertz that the drive shows', unit: 'Hz', min: 0, max: 400 },
] as const;
export type MeasuredField = (typeof MEASURED_FIELDS)[number]['name'];
/** Each figure under the name of its field; null: not read. */
export type MeasuredFigures = Record<MeasuredField, number | null>;

export interface FieldProblem {
  path: MeasuredField | 'figures';
  value: string | null;
  says: string;
}

/** What was typed into the fields, as figures; every field that cannot be read is told. One figure at least is asked for. */
export function readMeasured(
  typed: (name: MeasuredField) => string,
): { ok: true; value: MeasuredFigures } | { ok: false; problems: FieldProblem[] } {
  const problems: FieldProblem[] = [];
  const read = MEASURED_FIELDS.map(({ name, min, max }): [MeasuredField, number | null] => {
    const text = typed(name).trim();
    if (text === '') return [name, null];
    const found = readNumber(text, { min, max });
    if (found.ok) return [name, found.value];
    problems.push(...found.problems.map(({ says }) => ({ path: name, value: text.slice(0, 24), says })));
    return [name, null];
  });
  if (problems.length > 0) return { ok: false, problems };
  if (read.every(([, value]) => value === null))
    return { ok: false, problems: [{ path: 'figures', value: null, says: 'are all empty: tell at least one' }] };
  return { ok: true, value: Object.fromEntries(read) as MeasuredFigures };
}

/** The figures as the estimates take them. */
export const measuredOf = (told: MeasuredFigures): Measured => ({
  volts: [told.voltsL1L2, told.voltsL2L3, told.voltsL3L1],
  amps: [told.ampsL1, told.ampsL2, told.ampsL3],
  inputKw: told.inputKw,
  powerFactor: told.powerFactor,
  rpm: told.rpm,
  hertz: told.hertz,
});
