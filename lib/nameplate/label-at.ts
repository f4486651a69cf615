import { frameLength } from './frame-length';
import { labels } from './labels';
import type { Token } from './token';
import { bareAt, figureAt, measureAt } from './words-at';

/** A label and the value it takes, where one stands at this place. */
export function labelAt(text: string, at: number, cell: number): Token | null {
  if (at > 0 && /[A-Za-z\d]/.test(text[at - 1] as string)) return null;
  for (const { field, pattern, value, isOpen } of labels) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (!found) continue;
    const from = at + found[0].length;
    const sign = /\s*[:=]?\s*/y;
    sign.lastIndex = from;
    const start = from + (sign.exec(text)?.[0].length ?? 0);
    if (value === null) {
      if (isOpen && bareAt(text, start, cell)) return { kind: 'rest', at, end: from, cell };
      const limit = nextLabel(text, start);
      const end = field === 'frame' ? start + frameLength(text.slice(start, limit)) : limit;
      const said = text.slice(start, end).trim();
      if (field === null || said === '') return { kind: 'rest', at, end: Math.max(end, from), cell };
      return { kind: 'fact', field, text: said, at, end, cell };
    }
    value.lastIndex = start;
    const said = value.exec(text);
    if (said && field !== null)
      return { kind: 'fact', field, text: said[0].trim(), at, end: start + said[0].length, cell };
  }
  return null;
}

export function startsLabel(text: string, at: number): boolean {
  for (const { pattern } of labels) {
    pattern.lastIndex = at;
    if (pattern.test(text)) return true;
  }
  const word = measureAt(text, at, 0);
  return word !== null && (word.isFirm || (word.end - at > 1 && !/\d/.test(text[word.end] ?? ' ')));
}

/** Where the value of a label ends that has no shape of its own: at what can be read by itself, a wide gap or the end. */
function nextLabel(text: string, start: number): number {
  const words = /\S+/g;
  words.lastIndex = start;
  let isFirst = true;
  for (let word = words.exec(text); word; word = words.exec(text)) {
    const at = word.index;
    if (!isFirst && /\t|\||;| {2}/.test(text.slice(Math.max(start, at - 2), at))) return at;
    if (startsLabel(text, at)) return at;
    if (!isFirst && (bareAt(text, at, 0) ?? measuredFigure(text, at))) return at;
    isFirst = false;
  }
  return text.length;
}

/** "5 HP" after a label that it does not belong to. */
function measuredFigure(text: string, at: number): boolean {
  const figure = figureAt(text, at, 0);
  if (figure === null) return false;
  const gap = text[figure.end] === ' ' ? 1 : 0;
  return measureAt(text, figure.end + gap, 0) !== null;
}
