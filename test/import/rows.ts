import type { CellType, SheetRow } from '@/lib/import/sheet-row';

/** Rows as a sheet's reader hands them on; "|" parts the cells. */
export const rowsOf = (...lines: string[]): SheetRow[] =>
  lines.map((line, i) => ({ line: i + 1, cells: line.split('|').map((cell) => cell.trim()) }));

import type { Dialect } from '@/lib/import/cells/cell';
import { type Draft, type DraftOptions, draftOf } from '@/lib/import/draft';
import type { ImportKind } from '@/lib/import/field';
import { findColumns } from '@/lib/import/find-columns';

/** One row under its headings, read. A cell with a type is written [text, type]. */
export function readRow(
  kind: ImportKind,
  cells: Record<string, string | [string, CellType]>,
  { decimal = '.' as Dialect['decimal'], options = {} as DraftOptions } = {},
): Draft {
  const key = kind === 'sets' ? { Tag: 'SK-101' } : { 'Motor no': 'M-1' };
  const whole: Record<string, string | [string, CellType]> = { ...key, ...cells };
  const texts = Object.values(whole).map((cell) => (typeof cell === 'string' ? cell : cell[0]));
  const types = Object.values(whole).map((cell): CellType => (typeof cell === 'string' ? 'text' : cell[1]));
  const isTyped = Object.values(whole).some((cell) => typeof cell !== 'string');
  const { columns } = findColumns(kind, [{ line: 1, cells: Object.keys(whole) }], new Map());
  return draftOf(kind, { line: 2, cells: texts, ...(isTyped ? { types } : {}) }, columns, { decimal }, options);
}
