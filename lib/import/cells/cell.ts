import { plainLine } from '@/lib/nameplate/plain-line';
import type { CellType } from '../sheet-row';

/** How the sheet writes its figures; null: it could not be told. */
export interface Dialect {
  decimal: '.' | ',' | null;
}

/** A cell on its way to be read: cleaned, with what its column and its sheet say about it. */
export interface Cell {
  text: string;
  /** As the sheet's own typing has it; null for a sheet of plain text. */
  type: CellType | null;
  /** Of figures that carry none of their own. */
  unit: string | null;
  decimal: Dialect['decimal'];
}

/** What a cell says; `notes` tell a choice that was made and why. */
export type CellReading<T> = { ok: true; value: T; notes: string[] } | { ok: false; says: string };

export const told = <T>(value: T, notes: string[] = []): CellReading<T> => ({ ok: true, value, notes });
export const refused = (says: string): { ok: false; says: string } => ({ ok: false, says });

/** The text of a cell without what nobody sees: odd spaces, marks of direction, the spreadsheet's sign for text. */
export const cleanText = (raw: string): string =>
  raw
    .replaceAll(/[\u200B-\u200F\u2060\uFEFF\u00AD]/g, '')
    .replaceAll(/[\u00A0\u2007\u2009\u202F\u3000\t]/g, ' ')
    .trim()
    .replace(/^'(?=[^'])/, '')
    .trim();

/** The text of a figure: wide digits, odd dashes and slashes made plain. A number cell's own text has a dot, and noise. */
export function figureText({ text, type }: Cell): string {
  const plain = plainLine(text);
  if (type !== 'number' || !/^[-+]?\d*\.?\d+(?:e[-+]?\d+)?$/i.test(plain)) return plain;
  // 3.7 as a spreadsheet keeps it may come as 3.7000000000000002.
  const value = Number(Number(plain).toPrecision(12));
  return plainDecimal(value);
}

/** Without an exponent: 1e-7 is 0.0000001. */
export const plainDecimal = (value: number): string => {
  const short = String(value);
  return /e/i.test(short) && Math.abs(value) < 1e21 ? value.toFixed(12).replace(/\.?0+$/, '') : short;
};

/** A spreadsheet took what was typed for a day: "1/2" and "13/6" come so. */
export const cameAsDay = (text: string): string =>
  `came as the day ${text.slice(0, 20)}: the spreadsheet took it for a date; format the column as text and enter it again`;
