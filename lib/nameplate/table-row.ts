import type { Fact } from './field-name';
import type { Column } from './header';

/** A piece of a row: its text and where it stands. */
interface Piece {
  text: string;
  at: number;
  end: number;
}

/**
 * The figures of a row under their headings: one under each in order, or, where some are missing, each under the
 * heading it overlaps. Null when they cannot be told apart.
 */
export function tableRow(columns: readonly Column[], line: string, headings: string, number: number): Fact[] | null {
  const pieces = underHeadings(columns, line, headings);
  if (pieces === null) return null;
  return pieces.flatMap((piece, i): Fact[] => {
    const column = columns[i];
    if (!column?.field || piece === null || /^[-.*/]*$/.test(piece.text)) return [];
    return [{ field: column.field, text: `${piece.text} ${column.unit}`.trim(), line: number, at: piece.at }];
  });
}

function underHeadings(columns: readonly Column[], line: string, headings: string): (Piece | null)[] | null {
  const sign = ['\t', '|', ';'].find((one) => headings.includes(one) && line.includes(one));
  if (sign !== undefined) {
    const cells = cellsOf(line, sign);
    const named = cellsOf(headings, sign);
    if (cells.length === named.length && named.filter(({ text }) => text !== '').length === columns.length)
      return cells.filter((_, i) => named[i]?.text !== '').map((cell) => (cell.text === '' ? null : cell));
  }
  const wide = piecesOf(line, /\S+(?: \S+)*/g);
  if (wide.length === columns.length) return wide;
  const words = withConnections(piecesOf(line, /[^\s|;]+/g));
  if (words.length === columns.length) return words;
  return aligned(columns, words) ?? aligned(columns, wide);
}

function cellsOf(line: string, sign: string): Piece[] {
  let at = 0;
  return line.split(sign).map((cell) => {
    const piece = { text: cell.trim(), at, end: at + cell.length };
    at += cell.length + sign.length;
    return piece;
  });
}

const piecesOf = (line: string, pattern: RegExp): Piece[] =>
  [...line.matchAll(pattern)].map(({ 0: text, index }) => ({ text, at: index, end: index + text.length }));

/** "400 Δ" is one piece, and so is "230 / 400". */
function withConnections(words: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (const word of words) {
    const last = out.at(-1);
    const isTail = /^(?:Δ|D|YY|Y|Δ\/Y|D\/Y|Y\/Δ|YY\/Y)$/.test(word.text) && last && /^\d[\d/-]*$/.test(last.text);
    const isJoined = last && (/^\/\S*$/.test(word.text) || /\/$/.test(last.text));
    if (last && (isTail || isJoined))
      out[out.length - 1] = { text: `${last.text} ${word.text}`, at: last.at, end: word.end };
    else out.push(word);
  }
  return out;
}

/** Each piece under the one heading that it overlaps; null when one overlaps none or several, or two share one. */
function aligned(columns: readonly Column[], pieces: readonly Piece[]): (Piece | null)[] | null {
  if (pieces.length === 0 || pieces.length > columns.length) return null;
  const placed: (Piece | null)[] = columns.map(() => null);
  for (const piece of pieces) {
    const under = columns.flatMap((column, i) => (piece.at < column.end && column.at < piece.end ? [i] : []));
    const [only, ...more] = under;
    if (only === undefined || more.length > 0 || placed[only] !== null) return null;
    placed[only] = piece;
  }
  return placed;
}
