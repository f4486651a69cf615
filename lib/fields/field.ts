import { inchesOfMm, mmOfInches } from '@/lib/units/length';
import { kgOfPounds } from '@/lib/units/mass';
import { hpOfKw } from '@/lib/units/power';
import { readMass } from '@/lib/units/read-mass';
import { readNumber } from '@/lib/units/read-number';
import { readPower } from '@/lib/units/read-power';
import { readTemperature } from '@/lib/units/read-temperature';
import type { ReadingOfText } from '@/lib/units/reading-of-text';
import type { Edit, Leaf, State } from './state';

/** How a person likes to read and type lengths, masses and powers. */
export type Units = 'metric' | 'us';

/** A field of a record, as a person sees it and types it. An empty text is "not known". */
export interface Field {
  /** Its path in the record, and its name in a form. */
  path: string;
  label: string;
  /** The unit that a bare figure is taken in. */
  unit?: Record<Units, string>;
  choices?: readonly { value: string; words: string }[];
  /** Several of the choices may hold. */
  isMany?: true;
  /** A text of several lines, so many of them shown. */
  lines?: number;
  type?: 'date';
  hint?: string;
  shown(state: State, units: Units): string;
  /** Of a text that is not empty. */
  read(text: string, units: Units): { ok: true; edit: Edit } | { ok: false; says: string };
}

type Rest = Pick<Field, 'hint'>;

export const textField = (path: string, label: string, most: number, rest: Rest & { lines?: number } = {}): Field => ({
  ...rest,
  path,
  label,
  shown: (state) => plain(state[path]),
  read: (text) =>
    text.length > most ? no(`must have at most ${most} characters`) : { ok: true, edit: { [path]: text.trim() } },
});

/** A figure in one unit that everybody uses. */
export const figureField = (
  path: string,
  label: string,
  unit: string | null,
  [min, max]: readonly [number, number],
  rest: Rest = {},
): Field => ({
  ...rest,
  path,
  label,
  ...(unit !== null && { unit: { metric: unit, us: unit } }),
  shown: (state) => plain(state[path]),
  read: (text) => told(path, readSigned(unit === null ? text : text.replace(endsIn(unit), ''), min, max)),
});

/** A length, at most `mostMm`: what it can be at all decides whether "34.925" has a decimal sign or a thousands sign. */
export const lengthField = (path: string, label: string, mostMm: number, rest: Rest = {}): Field => ({
  ...rest,
  path,
  label,
  unit: { metric: 'mm', us: 'in' },
  shown: (state, units) => inUnits(state[path], units, inchesOfMm, 4),
  read: (text, units) => {
    const [, bare = text, unit = units === 'us' ? 'in' : 'mm'] =
      /^([^a-z"”″]+?)\s?(mm|in\.?|"|”|″)?$/i.exec(text.trim()) ?? [];
    if (unit.toLowerCase() === 'mm') return told(path, readNumber(bare, { min: 0, max: mostMm }));
    const read = readNumber(bare, { min: 0, max: inchesOfMm(mostMm) });
    return told(path, read.ok ? { ...read, value: mmOfInches(read.value) } : read);
  },
});

export const massField = (path: string, label: string, rest: Rest = {}): Field => ({
  ...rest,
  path,
  label,
  unit: { metric: 'kg', us: 'lb' },
  shown: (state, units) => inUnits(state[path], units, (kg) => kg / kgOfPounds(1), 1),
  read: (text, units) => told(path, asFigured(text, readMass, units === 'us' ? 'lb' : 'kg')),
});

export const temperatureField = (path: string, label: string, rest: Rest = {}): Field => ({
  ...rest,
  path,
  label,
  unit: { metric: '°C', us: '°F' },
  shown: (state, units) => inUnits(state[path], units, (celsius) => (celsius * 9) / 5 + 32, 1),
  read: (text, units) => told(path, asFigured(text, readTemperature, units === 'us' ? '°F' : '°C')),
});

/** A power that is kept in kW, such as what the pump asks; a plate's is kept as stamped (rating-cells). */
export const powerField = (path: string, label: string, rest: Rest = {}): Field => ({
  ...rest,
  path,
  label,
  unit: { metric: 'kW', us: 'hp' },
  shown: (state, units) => inUnits(state[path], units, hpOfKw, 3),
  read: (text, units) => {
    const read = asFigured(text, readPower, units === 'us' ? 'hp' : 'kW');
    if (!read.ok) return no(read.problems[0]?.says ?? 'is not a power');
    const [power, ...more] = read.value;
    if (power === undefined || more.length > 0) return no('names several powers: write one');
    return { ok: true, edit: { [path]: 'kw' in power ? power.kw : rounded(power.hp / hpOfKw(1), 4) } };
  },
});

export const choiceField = (
  path: string,
  label: string,
  words: Readonly<Record<string, string>>,
  rest: Rest = {},
): Field => {
  const choices = Object.entries(words).map(([value, said]) => ({ value, words: said }));
  return {
    ...rest,
    path,
    label,
    choices,
    shown: (state) => plain(state[path]),
    read: (text) =>
      Object.hasOwn(words, text)
        ? { ok: true, edit: { [path]: text } }
        : no(`must be one of ${choices.map((one) => one.words).join(', ')}`),
  };
};

/** A choice of figures: 1 or 3 phases. */
export const figureChoice = (path: string, label: string, words: Readonly<Record<number, string>>): Field => ({
  path,
  label,
  choices: Object.entries(words).map(([value, said]) => ({ value, words: said })),
  shown: (state) => plain(state[path]),
  read: (text) =>
    Object.hasOwn(words, text)
      ? { ok: true, edit: { [path]: Number(text) } }
      : no(`must be one of ${Object.keys(words).join(', ')}`),
});

export const yesNoField = (path: string, label: string, rest: Rest = {}): Field => ({
  ...rest,
  path,
  label,
  choices: [
    { value: 'yes', words: 'yes' },
    { value: 'no', words: 'no' },
  ],
  shown: (state) => (state[path] === undefined ? '' : state[path] === true ? 'yes' : 'no'),
  read: (text) =>
    text === 'yes' || text === 'no' ? { ok: true, edit: { [path]: text === 'yes' } } : no('must be yes or no'),
});

/** Several of a list. "none" alone: none of them, said by a person. */
export const manyField = (
  path: string,
  label: string,
  words: Readonly<Record<string, string>>,
  none: string,
): Field => {
  const choices = [
    ...Object.entries(words).map(([value, said]) => ({ value, words: said })),
    { value: 'none', words: none },
  ];
  return {
    path,
    label,
    choices,
    isMany: true,
    shown: (state) => {
      const value = state[path];
      return value === undefined ? '' : Array.isArray(value) && value.length === 0 ? 'none' : plain(value);
    },
    read: (text) => {
      const values = text.split(',').map((one) => one.trim());
      if (values.includes('none'))
        return values.length > 1 ? no(`says both “${none}” and others`) : { ok: true, edit: { [path]: [] } };
      const stray = values.find((value) => !Object.hasOwn(words, value));
      return stray === undefined
        ? { ok: true, edit: { [path]: [...new Set(values)] } }
        : no(`names “${stray}”, which is none of the choices`);
    },
  };
};

export const dateField = (path: string, label: string, rest: Rest = {}): Field => ({
  ...rest,
  path,
  label,
  type: 'date',
  shown: (state) => plain(state[path]),
  read: (text) => {
    const isDay =
      /^\d{4}-\d\d-\d\d$/.test(text) &&
      !Number.isNaN(Date.parse(text)) &&
      new Date(text).toISOString().startsWith(text);
    return isDay ? { ok: true, edit: { [path]: text } } : no('must be a day, written as 2026-04-30');
  },
});

export const no = (says: string) => ({ ok: false, says }) as const;

const told = (path: string, read: ReadingOfText<number>) => {
  if (!read.ok) return no(read.problems.map(({ says }) => says).join('; '));
  const [doubt] = read.doubts;
  return doubt === undefined ? ({ ok: true, edit: { [path]: read.value } } as const) : no(doubt.says);
};

/** What is typed is read by the unit it carries; a bare figure by the field's own. */
function asFigured<T>(text: string, read: (text: string) => ReadingOfText<T>, unit: string): ReadingOfText<T> {
  return read(/^[\d\s.,/½¼¾⅓⅔⅛⅜⅝⅞+−-]+$/.test(text.trim()) ? `${text.trim()} ${unit}` : text);
}

function readSigned(text: string, min: number, max: number): ReadingOfText<number> {
  const bare = text.trim().replace('−', '-');
  if (!bare.startsWith('-')) return readNumber(bare, { min, max });
  const read = readNumber(bare.slice(1), { min: Math.max(0, -max), max: -min });
  return read.ok ? { ...read, value: -read.value } : read;
}

const endsIn = (unit: string) => new RegExp(`\\s?${unit.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}\\.?$`, 'i');

const plain = (value: Leaf | undefined): string =>
  value === undefined
    ? ''
    : Array.isArray(value)
      ? value.join(',')
      : typeof value === 'number'
        ? String(exact(value))
        : String(value);

/** Without the last digits that binary fractions leave: 14.850000000000001 was worked out as 14.85. */
const exact = (value: number) => Number(value.toPrecision(12));

const rounded = (value: number, digits: number) => Number(value.toFixed(digits));

function inUnits(value: Leaf | undefined, units: Units, us: (value: number) => number, digits: number): string {
  return typeof value !== 'number' ? '' : String(units === 'us' ? rounded(us(value), digits) : exact(value));
}
