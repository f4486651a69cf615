import { drawnLength, type Figure } from './dimension-line';
import type { Box, DimensionLine, Drawing } from './drawing';
import { boxOf, frameView, textMmOf } from './frame-view';
import { heightLines } from './height-lines';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { place, slideOf } from './place';
import { boxOfText, figuresAt, letterAt } from './placed-text';
import { sentenceOf } from './sentence';
import { type Ends, ROW_OF_TEXT, shaftEndLabels, shaftEndTold } from './shaft-end';
import { type NextLetter, shaftDetails, underDetail } from './side-details';
import { sideFigures } from './side-figures';
import { levelLines } from './side-lines';
import { sideShapes } from './side-shapes';
import { underFeet, underLabels, underWords } from './under-feet';

/** From the side, the pump at the left: shaft height, shaft end, holes along. `out` is null where one motor is shown. */
export function sideView(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  nextLetter: NextLetter,
): Drawing | null {
  const placed = place(candidate, facts.together, slideOf(candidate, out, facts));
  const placedOut = out === null ? null : place(out, facts.together, 0);
  const ends: Ends = { candidate, out, placed, placedOut, facts };
  const under = underFeet(candidate, out, facts);
  const figures = sideFigures(ends);
  const shapes = sideShapes(ends, under);
  if (shapes.every(({ role }) => role === 'centre')) return null; // a line through nothing is no view
  const content = downTo(boxOf(shapes), figures.height);
  const sides = { left: 1.2, right: 4 };
  const textMm = textMmOf(content, sides);
  const level = levelLines(figures, placed, content, textMm, facts);
  const told = shaftEndTold(ends);
  const frame = frameView(content, {
    ...sides,
    top: 1.6 + told.length * ROW_OF_TEXT,
    bottom: Math.max(level.bottom, under === null ? 0 : 4),
  });
  const [right, bottom] = [content.x + content.width, content.y + content.height];
  const corner = { at: { x: right + textMm * 3.7, y: bottom + textMm * 2.4 }, anchor: 'end' } as const;
  const atRight = { fromX: right + textMm * 0.2, at: right + textMm * 2 };
  const free = { ...frame, bottomY: bottom, clearX: besideX(level.lines, textMm) };
  const ofFeet = underDetail(candidate, out, under, placed, facts, free, nextLetter);
  const ofShaft = shaftDetails(candidate, out, placed, placedOut, facts, frame, nextLetter);
  const [letter] = ofShaft.map((detail) => boxOfText(letterAt(detail, textMm), textMm));
  const over = { x: frame.viewBox.x + textMm * 0.3, y: content.y - textMm * 0.9 };
  return {
    caption: out === null ? 'Side' : facts.together === 'faces' ? 'Side, faces together' : 'Side, shafts in line',
    viewBox: frame.viewBox,
    textMm,
    shapes,
    dimensions: [
      ...level.lines,
      ...(figures.height.isAsked ? heightLines(figures.height, under, atRight, textMm, facts.unit) : []),
    ],
    labels: [
      ...shaftEndLabels(ends, over, textMm, letter ?? null),
      ...(under === null ? [] : underLabels(under, corner, textMm, facts.unit)),
    ],
    details: [...ofFeet, ...ofShaft],
    notDrawn: Object.values(figures)
      .filter((figure) => figure.isAsked && drawnLength(figure) === null)
      .map((figure) => figure.name),
    sentence: sentenceOf('Side view', candidate, out, Object.values(figures), facts, [
      ...(under === null ? [] : [underWords(under, facts.unit)]),
      ...told.map(({ says }) => says),
    ]),
  };
}

/** A box that reaches down to the plane of the feet, where no foot is drawn there. */
function downTo(box: Box, height: Figure): Box {
  const y = height.isAsked ? drawnLength(height) : null;
  return y === null ? box : { ...box, height: Math.max(box.height, y - box.y) };
}

/** The right end of figures that stand past their line; before everything where none do. */
function besideX(lines: readonly DimensionLine[], textMm: number): number {
  const boxes = lines
    .filter(({ isBeside }) => isBeside)
    .flatMap((line) => figuresAt(line, textMm).map((text) => boxOfText(text, textMm)));
  return Math.max(...boxes.map(({ x, width }) => x + width), Number.NEGATIVE_INFINITY);
}
