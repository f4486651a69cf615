import type { FieldName } from './field-name';
import { labels } from './labels';
import { measureWords } from './measure-words';

/** A heading of a table: what stands below it, and from where to where it is written. */
export interface Column {
  /** Null: a heading that nobody reads here ("SERIAL NO"). */
  field: FieldName | null;
  unit: string;
  at: number;
  end: number;
}

/** The headings of a line that holds nothing else; null for any other line. */
export function header(line: string): Column[] | null {
  const columns: Column[] = [];
  let at = 0;
  while (at < line.length) {
    const gap = /[\s|;,:=/]+/y;
    gap.lastIndex = at;
    at += gap.exec(line)?.[0].length ?? 0;
    if (at >= line.length) break;
    const column = columnAt(line, at) ?? columnAt(line, at + symbolLength(line, at));
    if (!column || columns.length >= MOST_COLUMNS) return null;
    columns.push(column);
    at = column.end;
  }
  return columns.length > 0 ? columns : null;
}

const MOST_COLUMNS = 24;

/** "P kW", "U [V]": the symbol of the quantity before its unit. */
function symbolLength(line: string, at: number): number {
  const symbol = /(?:P[2nN]?|U[nN]?|I[nN]?|f|n)\s?(?=[A-Za-z[(])/y;
  symbol.lastIndex = at;
  return symbol.exec(line)?.[0].length ?? 0;
}

function columnAt(line: string, at: number): Column | null {
  for (const { field, pattern, isOpen } of labels) {
    pattern.lastIndex = at;
    const found = pattern.exec(line);
    if (found && field !== 'brake') return { field: isOpen ? null : field, unit: '', at, end: at + found[0].length };
  }
  for (const { field, pattern, unit } of measureWords) {
    pattern.lastIndex = at;
    const found = pattern.exec(line);
    if (found) return { field, unit, at, end: at + found[0].length };
  }
  return null;
}
