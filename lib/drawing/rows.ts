import { fitsOnLine } from './dimension-line';
import type { DimensionLine } from './drawing';

/** Heights of text from one row of level dimension lines to the next: two figures and room. */
export const ROW = 2.8;

type Line = Omit<DimensionLine, 'at' | 'isBeside' | 'direction'>;

/**
 * Level lines in rows, the first row nearest to what is drawn: both in one where they lie end to end and each figure fits
 * between its ends. Else the outer line, whose extension lines run through the inner row, gets a row of its own.
 */
export function inRows(
  inner: Line | null,
  outer: Line | null,
  textMm: number,
  rowY: (row: number) => number,
): { lines: DimensionLine[]; rows: number } {
  const fits = (line: Line) => fitsOnLine(line, Math.abs(line.to.x - line.from.x), textMm);
  const placed = (line: Line, row: number): DimensionLine => ({
    ...line,
    direction: 'level',
    at: rowY(row),
    isBeside: !fits(line),
  });
  if (inner === null || outer === null) {
    const only = inner ?? outer;
    return only === null ? { lines: [], rows: 0 } : { lines: [placed(only, 0)], rows: 1 };
  }
  const isOneRow = fits(inner) && fits(outer) && !doOverlap(inner, outer);
  const lines = [placed(inner, 0), placed(outer, isOneRow ? 0 : 1)];
  return { lines, rows: isOneRow ? 1 : 2 };
}

function doOverlap(a: Line, b: Line): boolean {
  const most = (line: Line) => Math.max(line.from.x, line.to.x);
  const least = (line: Line) => Math.min(line.from.x, line.to.x);
  return Math.min(most(a), most(b)) - Math.max(least(a), least(b)) > 0.005;
}
