import type { Shown } from './cell-format';
import type { CellType } from './dialect';

/** A stored figure as a person reads it in its cell. Days are written as 2026-04-30, so that what became one can be seen. */
export function figureText(stored: string, shown: Shown, is1904: boolean): { text: string; type: CellType } {
  const value = Number(stored);
  if (stored.trim() === '' || !Number.isFinite(value)) return { text: stored, type: 'text' };
  switch (shown) {
    case 'plain':
      return { text: String(value), type: 'number' };
    case 'percent':
      return { text: `${Number((value * 100).toPrecision(12))} %`, type: 'number' };
    case 'time':
      return { text: clock(value), type: 'date' };
    case 'date':
    case 'moment': {
      const day = dayOf(value, is1904);
      if (day === null) return { text: String(value), type: 'number' };
      const time = value % 1 === 0 ? '' : ` ${clock(value)}`;
      return { text: `${day}${time}`, type: 'date' };
    }
  }
}

const LAST_DAY = 2_958_465; // 9999-12-31
const DAY_MS = 86_400_000;

/** Days from 1900 count a 29 February 1900 that never was (ECMA-376 part 1, 18.17.4.1). */
function dayOf(value: number, is1904: boolean): string | null {
  const days = Math.floor(value);
  if (days < 0 || days > LAST_DAY) return null;
  if (is1904) return iso(Date.UTC(1904, 0, 1) + days * DAY_MS);
  if (days === 60) return '1900-02-29';
  return iso(Date.UTC(1899, 11, days > 60 ? 30 : 31) + days * DAY_MS);
}

const iso = (ms: number) => new Date(ms).toISOString().slice(0, 10);

function clock(value: number): string {
  const minutes = Math.round((value % 1) * 1_440);
  return `${String(Math.floor(minutes / 60) % 24).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** A sign that XML forbids stands as _x000D_ (ECMA-376 part 1, 22.9.2.19). */
export const unescaped = (text: string): string =>
  text.replaceAll(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));

/** The other way: also signs that are half of one, which no XML may hold. */
export const escapedText = (text: string): string =>
  text
    .replaceAll(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replaceAll(/(?![\t\n])\p{Cc}|\p{Cs}|[\uFFFE\uFFFF]/gu, escaped)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');

const escaped = (sign: string) => `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;
