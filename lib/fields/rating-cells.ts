import { readPlate } from '@/lib/nameplate/read-plate';
import type { CONNECTIONS } from '@/lib/plant/rating';
import { readNumber } from '@/lib/units/read-number';
import type { Edit, State } from './state';

/** The cells of one row of ratings, each as it stands on the plate. */
export const RATING_CELLS = [
  { cell: 'output', label: 'Output', hint: '7½ HP, 5.5 kW' },
  { cell: 'volts', label: 'Volts', hint: '230/460' },
  { cell: 'hertz', label: 'Hz', hint: '60' },
  { cell: 'rpm', label: 'rpm', hint: '1755' },
  { cell: 'amps', label: 'Amps', hint: '19.4/9.7' },
  { cell: 'pf', label: 'Power factor', hint: '0.82' },
  { cell: 'eff', label: 'Efficiency, %', hint: '91.7' },
  { cell: 'sf', label: 'Service factor', hint: '1.15' },
  { cell: 'connection', label: 'Connection', hint: '' },
] as const;
export type RatingCell = (typeof RATING_CELLS)[number]['cell'];
export type RatingRow = Record<RatingCell, string>;

export const CONNECTION_WORDS: Record<(typeof CONNECTIONS)[number], string> = {
  star: 'star',
  delta: 'delta',
  'series-star': 'series star',
  'parallel-star': 'parallel star',
  'series-delta': 'series delta',
  'parallel-delta': 'parallel delta',
};

/** A plate has no more rows than this (lib/plant/motor). */
export const MOST_RATINGS = 24;
const KEYS = [
  'volts',
  'voltsMin',
  'voltsMax',
  'hertz',
  'hp',
  'kw',
  'rpm',
  'amps',
  'connection',
  'pf',
  'efficiencyPct',
  'serviceFactor',
] as const;

/** The rows of a record as the cells show them. */
export function ratingRows(state: State): RatingRow[] {
  const rows: RatingRow[] = [];
  for (let i = 0; i < MOST_RATINGS; i += 1) {
    const told = (key: (typeof KEYS)[number]) => {
      const value = state[`ratings.${i}.${key}`];
      return value === undefined ? '' : String(value);
    };
    if (KEYS.every((key) => told(key) === '')) break;
    const [hp, kw, min, max] = [told('hp'), told('kw'), told('voltsMin'), told('voltsMax')];
    rows.push({
      output: hp !== '' ? `${hp} hp` : kw !== '' ? `${kw} kW` : '',
      volts: min !== '' && max !== '' ? `${min}-${max}` : told('volts'),
      hertz: told('hertz'),
      rpm: told('rpm'),
      amps: told('amps'),
      pf: told('pf'),
      eff: told('efficiencyPct'),
      sf: told('serviceFactor'),
      connection: told('connection'),
    });
  }
  return rows;
}

const LABELS = {
  output: 'OUTPUT',
  volts: 'VOLTS',
  hertz: 'HZ',
  rpm: 'RPM',
  amps: 'AMPS',
  pf: 'PF',
  eff: 'EFF',
} as const;

export type CellProblem = { cell: RatingCell; says: string };

/** One row as typed: one rating, or several where it names several voltages ("230/460"), the others paired with them. */
export function readRatingRow(row: RatingRow): { ratings: Edit[]; problems: CellProblem[] } {
  const problems: CellProblem[] = [];
  const lines = (Object.keys(LABELS) as (keyof typeof LABELS)[])
    .filter((cell) => row[cell].trim() !== '')
    .map((cell) => `${LABELS[cell]} ${row[cell].trim()}`);
  const { motor, unread, problems: found } = lines.length === 0 ? NOTHING : readPlate(lines.join('\n'));
  for (const { path, says } of found) problems.push({ cell: cellOf(path), says });
  for (const line of unread) problems.push({ cell: cellOfLine(line), says: `“${line}” is not understood here` });
  const ratings: Record<string, unknown>[] = (motor.ratings ?? []).map((rating) => ({ ...rating }));
  if (row.sf.trim() !== '') {
    const sf = readNumber(row.sf, { min: 1, max: 2 });
    if (!sf.ok) problems.push({ cell: 'sf', says: sf.problems[0]?.says ?? 'is not a figure' });
    else for (const rating of some(ratings)) rating.serviceFactor = sf.value;
  }
  if (row.connection !== '') {
    if (!Object.hasOwn(CONNECTION_WORDS, row.connection))
      problems.push({ cell: 'connection', says: 'must be one of the choices' });
    else if (ratings.length > 1)
      problems.push({
        cell: 'connection',
        says: 'is one, and the row names several voltages: give each voltage a row of its own',
      });
    else for (const rating of some(ratings)) rating.connection = row.connection;
  }
  return { ratings: ratings as Edit[], problems };
}

const NOTHING: ReturnType<typeof readPlate> = { motor: {}, unread: [], problems: [] };

/** A row that tells nothing else is a row all the same. */
function some(ratings: Record<string, unknown>[]): Record<string, unknown>[] {
  if (ratings.length === 0) ratings.push({});
  return ratings;
}

/** The edit that puts these rows in place of those that stand. */
export function ratingsEdit(ratings: readonly Edit[]): Edit {
  return Object.fromEntries(
    Array.from({ length: MOST_RATINGS }, (_, i) =>
      KEYS.map((key): [string, Edit[string]] => [`ratings.${i}.${key}`, ratings[i]?.[key] ?? null]),
    ).flat(),
  );
}

const CELL_OF_KEY: Record<string, RatingCell> = {
  hp: 'output',
  kw: 'output',
  voltsMin: 'volts',
  voltsMax: 'volts',
  efficiencyPct: 'eff',
  serviceFactor: 'sf',
};

function cellOf(path: string): RatingCell {
  const key = path.split('.').at(-1) ?? '';
  return CELL_OF_KEY[key] ?? RATING_CELLS.find(({ cell }) => cell === key)?.cell ?? 'output';
}

function cellOfLine(line: string): RatingCell {
  const found = (Object.entries(LABELS) as [RatingCell, string][]).find(([, label]) => line.startsWith(label));
  return found ? found[0] : 'output';
}
