import type { Field, Units } from './field';
import { RATING_CELLS, type RatingCell, type RatingRow, ratingRows, ratingsEdit, readRatingRow } from './rating-cells';
import type { Edit, State } from './state';

/** What was typed, by the name of each input. */
export type Typed = Readonly<Record<string, string>>;
export type FormProblem = { path: string; says: string };

/** The name of a cell of the ratings in a form. */
export const cellName = (row: number, cell: RatingCell) => `ratings.${row}.${cell}`;

/**
 * What a form changes of a record: only fields whose text is not the one that the record would show, so that a figure
 * nobody touched keeps what it is, whatever unit it was shown in. Or every problem at once.
 */
export function readForm(
  fields: readonly Field[],
  state: State,
  typed: Typed,
  units: Units,
  { hasRatings }: { hasRatings: boolean },
): { edit: Edit; problems: FormProblem[] } {
  const problems: FormProblem[] = [];
  let edit: Edit = {};
  for (const field of fields) {
    const text = typed[field.path]?.trim();
    if (text === undefined || text === field.shown(state, units).trim()) continue;
    if (text === '') edit = { ...edit, ...emptied(field, state) };
    else {
      const read = field.read(text, units);
      if (read.ok) edit = { ...edit, ...read.edit };
      else problems.push({ path: field.path, says: `${field.label}: “${shortened(text)}” ${read.says}.` });
    }
  }
  if (!hasRatings) return { edit, problems };
  const rows = typedRows(typed);
  if (JSON.stringify(rows) === JSON.stringify(ratingRows(state))) return { edit, problems };
  const read = rows.map(readRatingRow);
  read.forEach(({ problems: found }, row) => {
    for (const { cell, says } of found) {
      const label = RATING_CELLS.find((one) => one.cell === cell)?.label ?? cell;
      problems.push({ path: cellName(row, cell), says: `Ratings, row ${row + 1}, ${label.toLowerCase()}: ${says}.` });
    }
  });
  return { edit: { ...edit, ...ratingsEdit(read.flatMap(({ ratings }) => ratings)) }, problems };
}

/** Everything that a field owns, told no more. */
function emptied(field: Field, state: State): Edit {
  const own = Object.keys(state).filter((path) => path === field.path || path.startsWith(`${field.path}.`));
  return Object.fromEntries([field.path, ...own].map((path) => [path, null]));
}

/** The rows of ratings in which anything was typed. */
export function typedRows(typed: Typed): RatingRow[] {
  const rows: RatingRow[] = [];
  for (let row = 0; RATING_CELLS.some(({ cell }) => Object.hasOwn(typed, cellName(row, cell))); row += 1) {
    const told = RATING_CELLS.map(({ cell }) => [cell, (typed[cellName(row, cell)] ?? '').trim()]);
    if (told.some(([, text]) => text !== '')) rows.push(Object.fromEntries(told) as RatingRow);
  }
  return rows;
}

/** The record as the inputs show it. */
export function shownIn(
  fields: readonly Field[],
  state: State,
  units: Units,
  { hasRatings }: { hasRatings: boolean },
): Typed {
  const cells = hasRatings
    ? ratingRows(state).flatMap((row, i) => RATING_CELLS.map(({ cell }) => [cellName(i, cell), row[cell]] as const))
    : [];
  return Object.fromEntries([...fields.map((field) => [field.path, field.shown(state, units)] as const), ...cells]);
}

const shortened = (text: string) => (text.length > 60 ? `${text.slice(0, 57)}...` : text);
