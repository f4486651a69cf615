import type { Dialect, SheetRow } from './dialect';
import { readCsv } from './read-csv';
import { readXlsx } from './read-xlsx';

/** The rows of a file, one by one, as it was found to be written. Empty rows are left out. Throws SheetRefused. */
export function readRows(bytes: Uint8Array, dialect: Dialect, signal?: AbortSignal): AsyncGenerator<SheetRow> {
  return dialect.format === 'csv' ? readCsv(bytes, dialect, signal) : readXlsx(bytes, dialect.sheet, signal);
}
