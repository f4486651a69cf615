import { bareWords } from './bare-words';
import type { Fact } from './field-name';
import { frameLength } from './frame-length';
import { labels } from './labels';
import { measureWords } from './measure-words';
import { numberText } from './number-text';
import { pairTokens } from './pair-tokens';
import { plainLine } from './plain-line';
import type { Token } from './token';
import { unreadOf } from './unread-of';

/** What a line says, as it stood, and the parts of it that nobody reads. */
export interface ScannedLine {
  facts: Fact[];
  unread: string[];
  /** It names what its figures are: a label, or a measure of more than one letter. */
  isLabelled: boolean;
}

/**
 * Reads a line from left to right. A label takes what follows it; a measure and a figure beside each other belong
 * together, whichever stands first, where the line can be paired in one way only.
 */
export function scanLine(original: string, line: number): ScannedLine {
  const text = plainLine(original);
  const found = tokensOf(text);
  const tokens = pairTokens(found);
  const facts = tokens.flatMap((token): Fact[] =>
    token.kind === 'fact' ? [{ field: token.field, text: token.text, line, at: token.at }] : [],
  );
  const isLabelled = found.some(({ kind, at, end }) => (kind === 'measure' && end - at > 1) || startsLabel(text, at));
  return { facts, unread: unreadOf(tokens, original), isLabelled };
}

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let cell = 0;
  while (at < text.length) {
    const gap = /[\s,;|•·]+/y;
    gap.lastIndex = at;
    const space = gap.exec(text)?.[0];
    if (space !== undefined) {
      if (/\t|\||;| {2}|,\s/.test(space)) cell += 1;
      at += space.length;
      continue;
    }
    const token =
      labelled(text, at, cell) ?? bare(text, at, cell) ?? measure(text, at, cell) ?? figureAt(text, at, cell);
    const next = token ?? rest(text, at, cell);
    tokens.push(next);
    at = Math.max(next.end, at + 1);
  }
  return tokens;
}

const startsWord = (text: string, at: number): boolean =>
  at === 0 ||
  !/[A-Za-z\d]/.test(text[at - 1] as string) ||
  (/\d/.test(text[at - 1] as string) && !/\d/.test(text[at] as string));

function labelled(text: string, at: number, cell: number): Token | null {
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
      if (isOpen && bare(text, start, cell)) return { kind: 'rest', at, end: from, cell };
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

/** Where the value of a label ends that has no shape of its own: at what can be read by itself, a wide gap or the end. */
function nextLabel(text: string, start: number): number {
  const words = /\S+/g;
  words.lastIndex = start;
  let isFirst = true;
  for (let word = words.exec(text); word; word = words.exec(text)) {
    const at = word.index;
    if (!isFirst && /\t|\||;| {2}/.test(text.slice(Math.max(start, at - 2), at))) return at;
    if (startsLabel(text, at)) return at;
    if (!isFirst && (bare(text, at, 0) ?? measuredFigure(text, at))) return at;
    isFirst = false;
  }
  return text.length;
}

function startsLabel(text: string, at: number): boolean {
  for (const { pattern } of labels) {
    pattern.lastIndex = at;
    if (pattern.test(text)) return true;
  }
  const word = measure(text, at, 0);
  return word !== null && (word.isFirm || (word.end - at > 1 && !/\d/.test(text[word.end] ?? ' ')));
}

/** "5 HP" after a label that it does not belong to. */
function measuredFigure(text: string, at: number): boolean {
  const figure = figureAt(text, at, 0);
  if (figure === null) return false;
  const gap = text[figure.end] === ' ' ? 1 : 0;
  return measure(text, figure.end + gap, 0) !== null;
}

function bare(text: string, at: number, cell: number): Token | null {
  if (!startsWord(text, at)) return null;
  for (const { field, pattern } of bareWords) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found) return { kind: 'fact', field, text: found[0].trim(), at, end: at + found[0].length, cell };
  }
  return null;
}

function measure(text: string, at: number, cell: number): Extract<Token, { kind: 'measure' }> | null {
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

function figureAt(text: string, at: number, cell: number): Token | null {
  if (at > 0 && /[A-Za-z\d]/.test(text[at - 1] as string)) return null;
  numberText.lastIndex = at;
  const found = numberText.exec(text);
  if (!found) return null;
  const end = at + found[0].length;
  // "6205-2RS" and "M3AA" are words, "5HP" is a figure and its measure.
  if (/[A-Za-z\d]/.test(text[end] ?? ' ') && measure(text, end, cell) === null) return null;
  if (/[-.]/.test(text[end] ?? ' ') && /[A-Za-z\d]/.test(text[end + 1] ?? ' ')) return null;
  return { kind: 'figure', text: found[0].trim(), at, end, cell };
}

function rest(text: string, at: number, cell: number): Token {
  const word = /[^\s|;]+/y;
  word.lastIndex = at;
  const length = word.exec(text)?.[0].length ?? 1;
  return { kind: 'rest', at, end: at + length, cell };
}
