export const ENCODINGS = ['utf-8', 'utf-16le', 'utf-16be', 'windows-1252'] as const;
export const DELIMITERS = [',', ';', '\t', '|'] as const;

/** How a file is written, as it was found; a person may say otherwise. */
export interface Dialect {
  format: 'csv' | 'xlsx';
  /** Null: a workbook tells its own. */
  encoding: (typeof ENCODINGS)[number] | null;
  /** It begins with a mark of its encoding. */
  hasMark: boolean;
  delimiter: (typeof DELIMITERS)[number] | null;
  /** Null: no cell tells. */
  decimal: '.' | ',' | null;
  /** The sheet that is read. */
  sheet: string | null;
  sheets: string[];
  /** What was found and why, each a sentence. */
  says: string[];
}

export interface SheetRow {
  /** As the person's own program numbers it, from 1. Of text, the line where the record begins. */
  line: number;
  cells: string[];
  types?: CellType[];
  /** A cell of the row reaches over several columns. */
  merged?: boolean;
}

export type CellType = 'text' | 'number' | 'date' | 'bool' | 'error' | 'empty';
