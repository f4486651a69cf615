import type { Query } from '@/app/lists/asked-for';
import { oneLine } from '@/app/paths';
import { lengthField, type Units } from '@/lib/fields/field';
import type { FormProblem } from '@/lib/fields/read-form';
import { MEASURABLE, type Measurable, type Measured, type Tool } from '@/lib/standards/measured/misfit';
import type { FaceSeen, Seen } from '@/lib/standards/measured/seen';
import { readNumber } from '@/lib/units/read-number';
import { MEASURED_WORDS } from './measured-words';

/** What the address tells of a motor on the bench. */
export interface MeasuredAsked {
  /** As typed, by name. */
  typed: Partial<Record<Measurable, string>>;
  measured: Measured;
  seen: Seen;
  tool: Tool;
  /** What bare figures are taken in: told with them, since an address is handed on to people of other habits. */
  units: Units;
  problems: FormProblem[];
}

export function measuredAsked(query: Query, own: Units): MeasuredAsked {
  const units = query.units === 'us' || query.units === 'metric' ? query.units : own;
  const typed: MeasuredAsked['typed'] = {};
  const measured: Partial<Record<Measurable, number>> = {};
  const problems: FormProblem[] = [];
  for (const name of MEASURABLE) {
    const text = textAsked(query, name);
    if (text === '') continue;
    typed[name] = text;
    const { label, most } = MEASURED_WORDS[name];
    const read = lengthField(name, label, most).read(text, units);
    const mm = read.ok ? read.edit[name] : null;
    if (typeof mm === 'number' && mm > 0) measured[name] = mm;
    else problems.push({ path: name, says: `${label}: “${text}” ${read.ok ? 'is no length' : read.says}.` });
  }
  const counted = textAsked(query, 'faceHoles');
  const holes = readNumber(counted, { min: 1, max: 24 });
  if (counted !== '' && !holes.ok)
    problems.push({ path: 'faceHoles', says: `Holes in the face: “${counted}” is no count.` });
  return {
    ...{ typed, measured, units, problems },
    seen: { face: faceOf(query.face), holes: holes.ok && counted !== '' ? holes.value : null },
    tool: query.tool === 'caliper' ? 'caliper' : 'tape',
  };
}

/** A text of the address, as one short line. */
export function textAsked(query: Query, name: string): string {
  const value = query[name];
  return typeof value === 'string' ? oneLine(value).slice(0, 60) : '';
}

const faceOf = (value: Query[string]): FaceSeen | null =>
  value === 'none' || value === 'tapped' || value === 'through' ? value : null;

export const isMeasured = ({ measured }: MeasuredAsked): boolean => Object.keys(measured).length > 0;
