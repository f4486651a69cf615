import type { Problem } from '@/lib/plant/reading';
import type { Fact } from './field-name';
import { labelAt, startsLabel } from './label-at';
import { loneFigures } from './lone-figures';
import { pairTokens } from './pair-tokens';
import { plainLine } from './plain-line';
import type { Token } from './token';
import { unreadOf } from './unread-of';
import { bareAt, figureAt, measureAt } from './words-at';

/** What a line says, as it stood, and the parts of it that nobody reads. */
export interface ScannedLine {
  facts: Fact[];
  unread: string[];
  /** The figures that name nothing, and what they could be. */
  problems: Problem[];
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
  return { facts, unread: unreadOf(tokens, original), problems: loneFigures(tokens), isLabelled };
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
    const last = tokens.at(-1);
    const isAfterMeasure = last?.kind === 'measure' && last.end === at;
    const next =
      labelAt(text, at, cell) ??
      (isAfterMeasure ? figureAt(text, at, cell, true) : null) ??
      bareAt(text, at, cell) ??
      measureAt(text, at, cell) ??
      figureAt(text, at, cell) ??
      rest(text, at, cell);
    tokens.push(next);
    at = Math.max(next.end, at + 1);
  }
  return tokens;
}

function rest(text: string, at: number, cell: number): Token {
  const word = /[^\s|;]+/y;
  word.lastIndex = at;
  const length = word.exec(text)?.[0].length ?? 1;
  return { kind: 'rest', at, end: at + length, cell };
}
