import type { ImportKind } from './field';
import { fieldOf, headingOf } from './fields';
import { LINE, WHY_NOT } from './match-heading';
import type { CellProblem, Column } from './row-draft';
import type { SheetRow } from './sheet-row';

/**
 * The refused rows as they came, under the file's own headings, with the line they stood on and why each was refused.
 * Mended and imported again, the two columns added here are left out by `findColumns`.
 */
export function refusedFile(
  kind: ImportKind,
  columns: readonly Column[],
  refused: readonly { row: SheetRow; problems: readonly CellProblem[] }[],
): string[][] {
  // Those of a file that was itself such a file are written anew.
  const own = columns.filter(({ heading }) => heading !== LINE && heading !== WHY_NOT);
  return [
    [...own.map((column) => headingFor(kind, column)), LINE, WHY_NOT],
    ...refused.map(({ row, problems }) => [
      ...own.map(({ index }) => row.cells[index] ?? ''),
      String(row.line),
      problems.map((one) => sentence(kind, one)).join(' '),
    ]),
  ];
}

/** A column without a heading gets that of its field: what was told by the content of many rows may not be by a few. */
function headingFor(kind: ImportKind, { heading, field: id }: Column): string {
  if (heading !== '') return heading;
  const field = id === null ? null : fieldOf(kind, id);
  return field === null ? '' : headingOf(field);
}

function sentence(kind: ImportKind, { field: id, value, says }: CellProblem): string {
  const field = id === null ? null : fieldOf(kind, id);
  const shown = value.length > 40 ? `${value.slice(0, 37)}...` : value;
  return `${field?.label ?? 'The row'}${shown === '' ? '' : ` "${shown}"`}: ${says}.`;
}
