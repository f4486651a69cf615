import type { ImportKind } from './field';
import { headingUnit } from './heading-unit';
import { type HeadingMatch, type KnownHeadings, matchHeading } from './match-heading';
import { normalHeading } from './normal-heading';
import { unitOf } from './quantity';
import type { SheetRow } from './sheet-row';

/** The headings of a sheet: the rows they stand in and what each column is called. */
export interface Headings {
  /** How many rows from the top come before the data. */
  end: number;
  lines: number[];
  columns: { heading: string; match: HeadingMatch | null }[];
}

/**
 * The row, or the two rows, that name the most fields. Null where no row names any: then there are no headings.
 * Titles stand above them; a second row may hold the units, or the parts of what the first one groups.
 */
export function findHeadings(kind: ImportKind, rows: readonly SheetRow[], known: KnownHeadings): Headings | null {
  let best: { at: number; claim: number } | null = null;
  for (const [at, row] of rows.slice(0, MOST_ABOVE).entries()) {
    if (!isHeadingLike(row)) continue;
    const claim = claimOf(singleRow(kind, row, known));
    if (claim >= leastOf(row) && claim > (best?.claim ?? 0)) best = { at, claim };
  }
  if (best === null) return null;
  const { at } = best;
  const row = rows[at] as SheetRow;
  const below = rows[at + 1];
  const above = rows[at - 1];
  if (below && isUnits(below)) return taken([row, below], at + 2, withUnits(kind, row, below, known));
  const single = singleRow(kind, row, known);
  for (const [upper, lower, end] of [
    [above, row, at + 1],
    [row, below, at + 2],
  ] as const) {
    if (!upper || !lower || !isHeadingLike(upper) || !isHeadingLike(lower) || filled(upper) === 0) continue;
    const pair = twoRows(kind, upper, lower, known);
    const isBetter = claimOf(pair) > best.claim;
    const namesGroups = upper === above && upper.cells.some((cell) => GROUPS.test(cell.trim()));
    if (isBetter || (namesGroups && claimOf(pair) >= best.claim)) return taken([upper, lower], end, pair);
  }
  return taken([row], at + 1, single);
}

const taken = (rows: readonly SheetRow[], end: number, columns: Headings['columns']): Headings => ({
  end,
  lines: rows.map(({ line }) => line),
  columns,
});

/** Headings start within so many rows: titles, revisions and addresses come first. */
const MOST_ABOVE = 40;
const GROUPS =
  /^(?:pump|motor|supply|set|drive|coupling|seat|base|load|spare|nameplate|plate|electrical|mechanical|pumpe|pompe|bomba|moteur)s?(?: data| details)?$/i;

const filled = (row: SheetRow): number => row.cells.filter((cell) => cell.trim() !== '').length;
const leastOf = (row: SheetRow): number => (filled(row) > 2 ? 1.5 : 0.9);

/** Headings are words: a row of which more than a quarter are figures is data. */
function isHeadingLike(row: SheetRow): boolean {
  const told = row.cells.filter((cell) => cell.trim() !== '');
  const figures = told.filter((cell) => /^[\d.,/ :-]{1,24}$/.test(cell.trim()) || cell.length > 150);
  return told.length > 0 && figures.length * 4 <= told.length;
}

const claimOf = (columns: Headings['columns']): number => {
  const scores = new Map<string, number>();
  for (const { match } of columns)
    if (match) {
      const key = match.field ?? 'left out';
      scores.set(key, Math.max(scores.get(key) ?? 0, Math.min(match.score, 1)));
    }
  return [...scores.values()].reduce((sum, score) => sum + score, 0);
};

const singleRow = (kind: ImportKind, row: SheetRow, known: KnownHeadings): Headings['columns'] =>
  row.cells.map((cell) => ({ heading: shown(cell), match: matchHeading(kind, cell, '', known) }));

function isUnits(row: SheetRow): boolean {
  const told = row.cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  return told.length > 0 && told.every((cell) => unitOf(bare(cell)) !== null);
}
const bare = (cell: string): string => cell.slice(0, 20).replaceAll(/[()[\]{}]/g, '');

const withUnits = (kind: ImportKind, row: SheetRow, units: SheetRow, known: KnownHeadings): Headings['columns'] =>
  row.cells.map((cell, i) => {
    const unit = units.cells[i]?.trim() ?? '';
    const heading = unit === '' ? shown(cell) : `${shown(cell)} (${bare(unit)})`;
    return { heading, match: matchHeading(kind, heading, '', known) };
  });

/** A heading over several columns is the group of each; one that stands alone in its column is the heading itself. */
function twoRows(kind: ImportKind, upper: SheetRow, lower: SheetRow, known: KnownHeadings): Headings['columns'] {
  const width = Math.max(upper.cells.length, lower.cells.length);
  let group = '';
  return Array.from({ length: width }, (_, i) => {
    const over = shown(upper.cells[i] ?? '');
    const own = shown(lower.cells[i] ?? '');
    if (over !== '') group = own === '' ? '' : over;
    if (own === '') return { heading: over, match: matchHeading(kind, over, '', known) };
    const match = matchHeading(kind, own, group, known);
    const isJoined = group !== '' && (over !== '' || saysMore(kind, own, group, match, known));
    return { heading: isJoined ? `${group} ${own}` : own, match };
  });
}

const saysMore = (
  kind: ImportKind,
  own: string,
  group: string,
  match: HeadingMatch | null,
  known: KnownHeadings,
): boolean =>
  GROUPS.test(group) ||
  normalHeading(matchHeading(kind, own, '', known)?.field ?? '') !== normalHeading(match?.field ?? '');

const shown = (cell: string): string => cell.slice(0, 200).replaceAll(/\s+/g, ' ').trim();

type Named = readonly { index: number; heading: string }[];

/** Whether a row of data says the headings over again, as below a page break. */
export function isHeadingRow(cells: readonly string[], headings: Named): boolean {
  let same = 0;
  let told = 0;
  for (const { index, names } of namesOf(headings)) {
    const cell = normalHeading(cells[index] ?? '');
    if (cell === '') continue;
    told += 1;
    if (names.includes(cell)) same += 1;
    // Nearly every row is data and says so in its first cells.
    if (told > 5 && same === 0) return false;
  }
  return same > 1 && same * 2 > told;
}

/** A file's headings are the same for each of its rows. */
const KNOWN_NAMES = new WeakMap<Named, { index: number; names: string[] }[]>();

function namesOf(headings: Named): { index: number; names: string[] }[] {
  const known = KNOWN_NAMES.get(headings);
  if (known) return known;
  const names = headings.map(({ index, heading }) => ({
    index,
    names: [normalHeading(heading), headingUnit(heading).name],
  }));
  KNOWN_NAMES.set(headings, names);
  return names;
}
