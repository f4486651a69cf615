import type { CellType, SheetRow } from '@/lib/import/sheet-row';

/** Rows as a sheet's reader hands them on; "|" parts the cells. */
export const rowsOf = (...lines: string[]): SheetRow[] =>
  lines.map((line, i) => ({ line: i + 1, cells: line.split('|').map((cell) => cell.trim()) }));

export const rowOf = (cells: string[], types?: CellType[], line = 2): SheetRow =>
  types ? { line, cells, types } : { line, cells };
