import { type Field, figureField, type Units } from './field';
import { MOTOR_FIELDS } from './motor-fields';
import { AREA_FIELDS, NAME_FIELD } from './place-fields';
import { CONNECTION_WORDS } from './rating-cells';
import { SET_FIELDS } from './set-fields';
import type { Edit, State } from './state';
import { endOf, isHidden, labelBeside, textBeside } from './words-beside';

/** One changed field as a person reads it. Null: not known. */
export interface ToldChange {
  label: string;
  from: string | null;
  to: string | null;
}

const FIELDS: Readonly<Record<string, readonly Field[]>> = {
  set: SET_FIELDS,
  motor: MOTOR_FIELDS,
  area: AREA_FIELDS,
  store: [NAME_FIELD],
  shelf: [NAME_FIELD],
};

const RATING: Readonly<Record<string, { label: string; unit: string | null }>> = {
  volts: { label: 'volts', unit: 'V' },
  voltsMin: { label: 'volts from', unit: 'V' },
  voltsMax: { label: 'volts to', unit: 'V' },
  hertz: { label: 'frequency', unit: 'Hz' },
  hp: { label: 'power', unit: 'hp' },
  kw: { label: 'power', unit: 'kW' },
  rpm: { label: 'speed', unit: 'rpm' },
  amps: { label: 'amps', unit: 'A' },
  connection: { label: 'connection', unit: null },
  pf: { label: 'power factor', unit: null },
  efficiencyPct: { label: 'efficiency', unit: '%' },
  serviceFactor: { label: 'service factor', unit: null },
};

/**
 * The fields of an entry of the audit in the words and units that their form has. `nameOf` tells what an id is called;
 * null: its id says nothing to anybody, so only that it changed is told.
 */
export function toldChanges(
  thing: string,
  before: Edit,
  after: Edit,
  units: Units,
  nameOf: (path: string, id: string) => string | null,
): ToldChange[] {
  const paths = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  const fields = FIELDS[thing] ?? [];
  const told = new Set<string>();
  const changes: ToldChange[] = [];
  for (const path of paths) {
    const field = fields.find((one) => path === one.path || path.startsWith(`${one.path}.`)) ?? ratingField(path);
    if (field === null && isHidden(path)) continue;
    if (field === null) {
      const text = (edit: Edit) => textBeside(path, edit[path] ?? null, nameOf);
      changes.push({ label: labelBeside(path), from: text(before), to: text(after) ?? endOf(path) });
    } else if (!told.has(field.path)) {
      told.add(field.path);
      changes.push({ label: field.label, from: fieldText(field, before, units), to: fieldText(field, after, units) });
    }
  }
  return changes;
}

function fieldText(field: Field, edit: Edit, units: Units): string | null {
  const state = Object.fromEntries(Object.entries(edit).filter(([, value]) => value !== null)) as State;
  const text = field.shown(state, units);
  if (text === '') return null;
  const words = field.isMany
    ? text.split(',').map((one) => field.choices?.find(({ value }) => value === one)?.words ?? one)
    : [field.choices?.find(({ value }) => value === text)?.words ?? text];
  const unit = field.unit?.[units];
  return `${words.join(', ')}${unit === undefined ? '' : ` ${unit}`}`;
}

/** A figure of one row of ratings. */
function ratingField(path: string): Field | null {
  const [, row, key = ''] = /^ratings\.(\d+)\.(\w+)$/.exec(path) ?? [];
  const known = RATING[key];
  if (row === undefined || known === undefined) return null;
  const label = `Rating ${Number(row) + 1}, ${known.label}`;
  const plain = figureField(path, label, known.unit, [0, 1e6]);
  if (key !== 'connection') return plain;
  return { ...plain, choices: Object.entries(CONNECTION_WORDS).map(([value, words]) => ({ value, words })) };
}
