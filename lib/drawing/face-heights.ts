import { drawnLength, figuresOnLine, fitsOnLine, type TwoFigures } from './dimension-line';
import type { Box, DimensionLine, Label } from './drawing';
import { heightLines } from './height-lines';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import type { UnderFeet } from './under-feet';

/** The shaft height at the left of the view, and on the same line what lies under the candidate's feet. */
export function faceHeightLines(
  candidate: Mount,
  out: Mount | null,
  under: UnderFeet | null,
  content: Box,
  textMm: number,
  facts: MountFacts,
): DimensionLine[] {
  const { height } = uprightFigures(candidate, out, facts);
  const up = height === null ? null : drawnLength(height);
  if (height === null || up === null) return [];
  return heightLines(height, under, { fromX: content.x + 2, at: content.x - textMm * 1.5 }, textMm, facts.unit);
}

/** From the lowest point of the candidate's face to its foot plane; where that is too short, the figures stand beside it. */
export function overhangLine(
  candidate: Mount,
  out: Mount | null,
  content: Box,
  textMm: number,
  facts: MountFacts,
): { line: DimensionLine; labels: Label[] } | null {
  const figures = uprightFigures(candidate, out, facts).over;
  const over = figures === null ? null : figures.in;
  if (figures === null || over === null || candidate.heightMm === null) return null;
  const texts = figuresOnLine(figures, facts.unit);
  const [from, to] = [candidate.heightMm - over, candidate.heightMm];
  const at = content.x + content.width + textMm * 1.5;
  const line: DimensionLine = {
    name: 'face over the foot plane',
    direction: 'upright',
    from: { x: 4, y: from },
    to: { x: content.x + content.width - 2, y: to },
    at,
    tone: 'in',
    isBeside: false,
    ...texts,
  };
  if (fitsOnLine(texts, Math.abs(over), textMm)) return { line, labels: [] };
  const beside = (text: string, tone: 'in' | 'out', row: number): Label => ({
    text,
    tone,
    anchor: 'start',
    at: { x: at + textMm * 0.5, y: Math.min(from, to) + textMm * (row * 1.15 - 0.1) },
    leader: [],
  });
  const labels = [beside(texts.upper, 'in', 0), ...(texts.lower === null ? [] : [beside(texts.lower, 'out', 1)])];
  return { line: { ...line, upper: null, lower: null }, labels };
}

/** The two upright figures of the view; null where there are no feet to measure from, or nothing to draw. */
export function uprightFigures(
  candidate: Mount,
  out: Mount | null,
  { together }: MountFacts,
): { height: TwoFigures | null; over: TwoFigures | null } {
  if (together === 'faces' || candidate.feet === false) return { height: null, over: null };
  const height = { in: candidate.heightMm, out: out === null ? undefined : out.heightMm };
  const over = {
    in: overFootPlane(candidate),
    out: out === null || out.face === null ? undefined : overFootPlane(out),
  };
  return { height: drawnLength(height) === null ? null : height, over: over.in === null ? null : over };
}

/** How far the lowest point of the face stays above the plane of the feet; negative: it hangs below. */
function overFootPlane({ heightMm, face }: Mount): number | null {
  return heightMm === null || face === null || face.outsideMm === null ? null : heightMm - face.outsideMm / 2;
}
