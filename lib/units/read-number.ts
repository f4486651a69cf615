import { figure } from './figure';
import { notUnderstood, type ReadingOfText, textProblem, understood } from './reading-of-text';

/** What the figure can be at all, in its own unit: decides between two readings where only one is possible. */
export interface Bounds {
  min: number;
  max: number;
}

/**
 * A figure as people write it: "7.5", "7,5", "1,450", "7½", "7-1/2", "7 1/2", "1/2", ".85". One sign followed by
 * exactly three digits ("1.450") is a decimal or a thousands sign: the bounds decide, and where they do not, it is
 * a problem naming both.
 */
export function readNumber(text: string, bounds: Bounds): ReadingOfText<number> {
  const written = text.trim();
  if (written.length > 24) return notUnderstood(written, 'is too long for a figure');
  const two = TWO_READINGS.exec(written);
  if (two) return decide(written, two, bounds);
  const value = fraction(written) ?? plain(written);
  if (value === null) return notUnderstood(written, looksLike(written) ?? 'is not a figure');
  if (value < bounds.min || value > bounds.max)
    return notUnderstood(written, `is not between ${figure(bounds.min, 3)} and ${figure(bounds.max)}`);
  return understood(value);
}

/** "I450", "1O": letters that a worn plate or a camera puts for digits. Said, never taken. */
function looksLike(written: string): string | null {
  if (!/\d/.test(written) || !/^[\dOoIl|.,]+$/.test(written)) return null;
  const likely = written.replace(/[Oo]/g, '0').replace(/[Il|]/g, '1');
  return likely === written ? null : `is not a figure: it looks like ${likely}; write it if the plate says so`;
}

const TWO_READINGS = /^([1-9]\d{0,2})([.,])(\d{3})$/;

function decide(written: string, parts: RegExpExecArray, bounds: Bounds): ReadingOfText<number> {
  const decimal = Number(`${parts[1]}.${parts[3]}`);
  const thousands = Number(`${parts[1]}${parts[3]}`);
  const isDecimal = decimal >= bounds.min && decimal <= bounds.max;
  const isThousands = thousands >= bounds.min && thousands <= bounds.max;
  const sign = parts[2] === '.' ? 'dot' : 'comma';
  const both = `could be ${figure(decimal, 3)} (${sign} as decimal sign) or ${figure(thousands)} (${sign} as thousands sign)`;
  if (isDecimal && isThousands) return notUnderstood(written, both);
  if (!isDecimal && !isThousands) return notUnderstood(written, `${both}; neither is possible here`);
  // A dot usually is the decimal sign and a comma between threes the thousands sign: only the other use is told.
  const usual = isDecimal === (parts[2] === '.');
  const value = isDecimal ? decimal : thousands;
  if (usual) return understood(value);
  return understood(value, [
    textProblem(written, `${both}; read as ${figure(value, 3)}, the other is not possible here`),
  ]);
}

const GLYPHS: Record<string, [number, number]> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅙': [1, 6],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};

function fraction(written: string): number | null {
  const glyph = /^(\d{0,4})[ -]?([½⅓⅔¼¾⅕⅙⅛⅜⅝⅞])$/.exec(written);
  if (glyph) {
    const [over, under] = GLYPHS[glyph[2] as string] as [number, number];
    return (glyph[1] === '' ? 0 : Number(glyph[1])) + over / under;
  }
  const written1 = /^(?:(\d{1,4})[ -])?(\d{1,2})\s?[/⁄]\s?(\d{1,2})$/.exec(written);
  if (!written1) return null;
  const over = Number(written1[2]);
  const under = Number(written1[3]);
  if (over === 0 || over >= under) return null; // 3/2 or 5/5 is a pair of figures, not a fraction.
  return (written1[1] === undefined ? 0 : Number(written1[1])) + over / under;
}

function plain(written: string): number | null {
  if (/^\d{1,9}$/.test(written)) return Number(written);
  if (/^\d{0,6}[.,]\d{1,6}$/.test(written)) return Number(written.replace(',', '.'));
  if (/^\d{1,3}(?:,\d{3}){1,2}\.\d{1,3}$/.test(written)) return Number(written.replaceAll(',', ''));
  if (/^\d{1,3}(?:\.\d{3}){1,2},\d{1,3}$/.test(written)) return Number(written.replaceAll('.', '').replace(',', '.'));
  if (/^\d{1,3}([,.' ])\d{3}\1\d{3}$/.test(written)) return Number(written.replace(/[,.' ]/g, ''));
  if (/^\d{1,3}[' ]\d{3}$/.test(written)) return Number(written.replace(/[' ]/, ''));
  return null;
}
