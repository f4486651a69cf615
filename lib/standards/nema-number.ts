import type { Cell } from './table';
import { type NemaTwoFRow, nemaTwoF } from './tables/nema-two-f';

/** First two digits times ten; the small frames are their own series. */
export const seriesOf = (number: number): number => (number < 100 ? number : Number(String(number).slice(0, 2)) * 10);

/** Whether digits are a NEMA frame number at all. */
export const isNemaNumber = (number: number): boolean => SMALL.includes(number) || nemaPattern(number) !== null;

/** Height and hole spacing along that the digits alone fix (MG 1 4.2.1, Table 4-2); null where the table has none. */
export function nemaPattern(number: number): { D: Cell; twoF: Cell } | null {
  if (number < 100) return null;
  const row = bySeries.get(seriesOf(number));
  const twoF = row?.twoF[lengthDigits(String(number).slice(2), row)];
  return row && twoF ? { D: row.D, twoF } : null;
}

const SMALL = [42, 48, 56];
const bySeries = new Map(nemaTwoF.rows.map((row) => [row.series, row]));

/** Series from which plates write the length with a leading zero: 5007 is 507 (common practice, no source). */
const PADDED_FROM = 500;

const lengthDigits = (digits: string, { series }: NemaTwoFRow): string =>
  series >= PADDED_FROM ? digits.replace(/^0(?=\d)/, '') : digits;
