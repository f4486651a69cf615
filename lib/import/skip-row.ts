import { cleanText } from './cells/cell';
import { isHeadingRow } from './find-headings';
import { isNotKnown } from './not-known';
import type { Column } from './row-draft';
import type { SheetRow } from './sheet-row';

/** Why a row is no row of data: empty, a line drawn, the headings again, a total, a heading within. Null: it is data. */
export function skipRow(row: SheetRow, columns: readonly Column[], keyIndex: number | null): string | null {
  const filled = row.cells.map(cleanText).filter((cell) => cell !== '');
  const [first] = filled;
  if (first === undefined) return 'is empty';
  if (filled.every((cell) => /^[-–—=_*.~#+\s]{1,400}$/.test(cell))) return 'is a line drawn';
  if (isHeadingRow(row.cells, columns)) return 'is the headings again';
  if (TOTAL.test(first)) return `is a total ("${first.slice(0, 40)}")`;
  const key = keyIndex === null ? '' : cleanText(row.cells[keyIndex] ?? '');
  if (filled.length > 1 || columns.length < 3) return filled.every(isNotKnown) ? 'tells nothing' : null;
  if (isNotKnown(first)) return 'tells nothing';
  if (row.merged === true || key !== first) return `is a heading or a remark ("${first.slice(0, 40)}")`;
  return null;
}

/** English, German, French and Spanish words from memory. */
export const TOTAL =
  /^(?:(?:grand |sub-? ?)?totals?|sum|count|average|number of (?:sets|motors|pumps)|summe|gesamt|insgesamt|zwischensumme|anzahl|somme|sous-total|suma)\s{0,3}:?\s{0,3}[\d.,]{0,12}$/i;
