import { type Field, figureField, type Units } from './field';
import { MOTOR_FIELDS } from './motor-fields';
import { AREA_FIELDS, NAME_FIELD } from './place-fields';
import { CONNECTION_WORDS } from './rating-cells';
import { SET_FIELDS } from './set-fields';
import type { Edit, Leaf, State } from './state';

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

/** What is kept by id, and what stands beside the form's fields. */
const OTHERS: Readonly<Record<string, string>> = {
  areaId: 'Area',
  storeId: 'Store',
  shelfId: 'Shelf',
  setId: 'In the set',
  motorId: 'Motor',
  place: 'Where it is',
  criticality: 'Criticality',
  retiredAt: 'Retired',
  motor: 'Motor',
  set: 'Set',
  verdict: 'Judged',
  says: 'What is wrong',
  why: 'Why',
  rule: 'About',
  againOn: 'Again on',
  name: 'Name',
  role: 'Role',
  email: 'E-mail',
  fileName: 'File',
  rows: 'Rows',
  swaps: 'Swaps',
  sets: 'Sets',
  motors: 'Motors',
  kind: 'Rows are',
  caption: 'Caption',
  scopes: 'May',
  expiresAt: 'Until',
  units: 'Units',
};

const PLACE_WORDS: Readonly<Record<string, string>> = {
  'in-set': 'in a set',
  'on-shelf': 'on a shelf',
  'at-repair': 'at repair',
  'on-order': 'on order',
  scrapped: 'scrapped',
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
    // What points to a record that has no name of its own, such as a fault, tells a reader nothing.
    if (field === null && path.endsWith('Id') && OTHERS[path] === undefined) continue;
    if (field === null) {
      const text = (edit: Edit) => otherText(path, edit[path] ?? null, nameOf);
      changes.push({ label: OTHERS[path] ?? path, from: text(before), to: text(after) });
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

function otherText(
  path: string,
  value: Leaf | null,
  nameOf: (path: string, id: string) => string | null,
): string | null {
  if (value === null) return null;
  const text = String(value);
  if (path.endsWith('Id')) return nameOf(path, text) ?? 'another';
  if (path === 'place') return PLACE_WORDS[text] ?? text;
  return path === 'retiredAt' || path === 'expiresAt' ? text.slice(0, 10) : text;
}
