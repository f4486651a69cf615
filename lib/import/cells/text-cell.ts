import { type Cell, type CellReading, refused, told } from './cell';

/** Words on one line; a note may keep its lines. What stands between double quotes is taken as it stands. */
export function textCell({ text }: Cell, most: number, isLong: boolean): CellReading<string> {
  const bare = unquoted(text);
  const plain = isLong
    ? bare.replaceAll(/\r\n?|[\u2028\u2029\u0085]/g, '\n').replaceAll(/[^\P{Cc}\n]|\p{Cs}/gu, ' ')
    : bare.replaceAll(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp} ]+/gu, ' ');
  const value = plain.trim();
  if (value.length > most) return refused(`has ${value.length} characters: at most ${most} are kept`);
  return told(value);
}

/** A tag or a serial, unless the spreadsheet has spoilt it. */
export function nameCell(cell: Cell, most: number): CellReading<string> {
  const isQuoted = unquoted(cell.text) !== cell.text;
  const spoilt = isQuoted ? null : spoiltBy(cell);
  return spoilt === null ? textCell(cell, most, false) : refused(spoilt);
}

/** What a spreadsheet does to tags, serials and frames that look like figures or days to it; null: nothing. */
export function spoiltBy({ text, type }: Cell): string | null {
  if (type === 'date' || DAY.test(text))
    return `looks like the day ${text.slice(0, 20)}: spreadsheets make dates of what they take for one; ${REMEDY}`;
  if (/^[-+]?\d(?:[.,]\d{1,20})?E[-+]\d{1,3}$/i.test(text))
    return `came as the figure ${text}: the spreadsheet has lost the digits that were entered; ${REMEDY}`;
  if (type === 'bool') return `came as ${text}: the spreadsheet took it for true or false; ${REMEDY}`;
  if (type === 'number' && text.replaceAll(/\D/g, '').length > EXACT_DIGITS)
    return `has more than ${EXACT_DIGITS} digits in a number cell: the spreadsheet has lost the last ones; ${REMEDY}`;
  return null;
}

/** Spreadsheets keep so many digits of a number. */
const EXACT_DIGITS = 15;
const REMEDY =
  'format the column as text and enter it again, or write it between double quotes if it is right as it stands';
const MONTH = '(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|Mrz|Mai|Okt|Dez)';
/** As spreadsheets write days; "DEC-04" in capitals may well be a tag. */
const DAY = new RegExp(
  `^(?:\\d{4}-\\d{2}-\\d{2}(?:[T ].{0,20})?|\\d{1,2}[./]\\d{1,2}[./]\\d{4}|\\d{1,2}/\\d{1,2}/\\d{2}|\\d{1,2}[-. ]${MONTH}(?:[-. ]\\d{2,4})?|${MONTH}[- ]\\d{2}(?:\\d{2})?)$`,
);

/** Text that would be read as something else, between double quotes; any other as it is. */
export const quoted = (text: string, isMisread: (text: string) => boolean): string =>
  unquoted(text) !== text || isMisread(text) ? `"${text}"` : text;

const unquoted = (text: string): string => /^"([\s\S]+)"$/.exec(text)?.[1] ?? text;
