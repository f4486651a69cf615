import { bareWords } from './bare-words';
import { measureWords } from './measure-words';
import { numberText } from './number-text';
import type { Token } from './token';

/** What stands at one place of a line and can be nothing else ("IP55", "TEFC"). */
export function bareAt(text: string, at: number, cell: number): Token | null {
  if (!startsWord(text, at)) return null;
  for (const { field, pattern } of bareWords) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found) return { kind: 'fact', field, text: found[0].trim(), at, end: at + found[0].length, cell };
  }
  return null;
}

export function measureAt(text: string, at: number, cell: number): Extract<Token, { kind: 'measure' }> | null {
  if (!startsWord(text, at)) return null;
  for (const { field, pattern, unit } of measureWords) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (!found) continue;
    const end = at + found[0].length;
    const sign = /\s*[:=]\s*/y;
    sign.lastIndex = end;
    const firm = sign.exec(text)?.[0].length ?? 0;
    return { kind: 'measure', field, unit, isFirm: firm > 0, at, end: end + firm, cell };
  }
  return null;
}

/** `isAfterMeasure`: the figure of "HP5" stands glued to its measure, that of "AB5" is part of a word. */
export function figureAt(text: string, at: number, cell: number, isAfterMeasure = false): Token | null {
  if (!isAfterMeasure && at > 0 && /[A-Za-z\d]/.test(text[at - 1] as string)) return null;
  numberText.lastIndex = at;
  const found = numberText.exec(text);
  if (!found) return null;
  const end = at + found[0].length;
  // "6205-2RS" and "M3AA" are words, "5HP" is a figure and its measure.
  if (/[A-Za-z\d]/.test(text[end] ?? ' ') && measureAt(text, end, cell) === null) return null;
  if (/[-.]/.test(text[end] ?? ' ') && /[A-Za-z\d]/.test(text[end + 1] ?? ' ')) return null;
  return { kind: 'figure', text: found[0].trim(), at, end, cell };
}

const startsWord = (text: string, at: number): boolean =>
  at === 0 ||
  !/[A-Za-z\d]/.test(text[at - 1] as string) ||
  (/\d/.test(text[at - 1] as string) && !/\d/.test(text[at] as string));
