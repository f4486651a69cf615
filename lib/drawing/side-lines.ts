import { drawnLength, type Figure, figuresOnLine } from './dimension-line';
import type { Box, DimensionLine } from './drawing';
import type { MountFacts } from './mount-facts';
import type { Placed } from './place';
import { inRows, ROW } from './rows';
import type { SideFigures } from './side-figures';

/** Extension lines start this far from an outline, mm. */
const CLEAR = 4;
/** From what is drawn to the first row of lines, in heights of text. */
const FIRST_ROW = 2.4;

/** Shaft end and holes along, under the view; `bottom` is the room they take, in heights of text. */
export function levelLines(
  { shaftEnd, along, diameter }: SideFigures,
  { holesX }: Placed,
  content: Box,
  textMm: number,
  { unit }: MountFacts,
): { lines: DimensionLine[]; bottom: number } {
  const bottom = content.y + content.height;
  const under = bottom - textMm * 0.4;
  const line = (figure: Figure, from: { x: number; y: number }, toX: number) => ({
    name: figure.name,
    from,
    to: { x: toX, y: under },
    tone: 'in' as const,
    ...figuresOnLine(figure, unit),
  });
  const [length, toEnd] = [along.isAsked ? drawnLength(along) : null, drawnLength(shaftEnd)];
  const shaftY = (drawnLength(diameter) ?? 0) / 2 + CLEAR;
  const { lines, rows } = inRows(
    length === null ? null : line(along, { x: holesX, y: under }, holesX + length),
    toEnd === null ? null : line(shaftEnd, { x: holesX - toEnd, y: Math.min(shaftY, under) }, holesX),
    textMm,
    (row) => bottom + textMm * (FIRST_ROW + row * ROW),
  );
  return { lines, bottom: rows === 0 ? 0.6 : FIRST_ROW + (rows - 1) * ROW + 1.4 };
}
