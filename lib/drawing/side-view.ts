import { drawnLength, figuresOnLine, fitsOnLine, needsDetail } from './dimension-line';
import type { DimensionLine, Drawing, Shape } from './drawing';
import { boxOf, frameView } from './frame-view';
import type { Mount } from './mount';
import { type MountFacts, shimsDrawnMm } from './mount-facts';
import { finsFromSide, PAD, polygon, rectangle, sideOutline, terminalBoxFromSide } from './outline';
import { type Placed, place } from './place';
import { sentenceOf } from './sentence';
import { type NextLetter, shaftDetails, shimDetail } from './side-details';

/** From the side, the pump at the left: shaft height, shaft end, holes along. `out` is null where one motor is shown. */
export function sideView(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  nextLetter: NextLetter,
): Drawing | null {
  const placed = place(candidate, facts.together);
  const placedOut = out === null ? null : place(out, facts.together);
  const figures = figuresOf(candidate, out, placed, placedOut, facts);
  const shapes = shapesOf(candidate, out, placed, placedOut, facts);
  if (shapes.every(({ role }) => role === 'centre')) return null; // a line through nothing is no view
  const content = boxOf(shapes);
  const frame = frameView(content, { left: 1.2, right: 4, top: 1.6, bottom: 4.4 });
  const dimensions = linesOf(figures, content, frame.textMm, facts);
  const unseen = { height: needsDetail(figures.height, frame.unseenMm), unseenMm: frame.unseenMm };
  const details = [
    ...shimDetail(candidate, out, facts, unseen, frame, nextLetter),
    ...shaftDetails(candidate, out, placed, placedOut, facts, frame, nextLetter),
  ];
  return {
    caption: facts.together === 'holes' ? 'Side, shafts in line' : 'Side, faces together',
    viewBox: frame.viewBox,
    textMm: frame.textMm,
    shapes,
    dimensions,
    labels: [],
    details,
    notDrawn: Object.values(figures)
      .filter((figure) => figure.isAsked && drawnLength(figure) === null)
      .map((figure) => figure.name),
    sentence: sentenceOf('Side view', candidate.name, out === null ? null : out.name, Object.values(figures), facts),
  };
}

/** Extension lines start this far from an outline, mm. */
const CLEAR = 4;

interface Figure {
  name: string;
  in: number | null;
  out: number | null | undefined;
  isAsked: boolean;
}

function figuresOf(
  candidate: Mount,
  out: Mount | null,
  placed: Placed,
  placedOut: Placed | null,
  facts: MountFacts,
): Record<'height' | 'shaftEnd' | 'along' | 'diameter', Figure> {
  const hasFeet = candidate.feet !== false || (out !== null && out.feet !== false && out.heightMm !== null);
  const of = (name: string, isAsked: boolean, read: (mount: Mount) => number | null): Figure => ({
    name,
    isAsked,
    in: read(candidate),
    out: out === null ? undefined : read(out),
  });
  const end = (at: Placed | null) => (at === null || at.shaftEndX === null ? null : -at.shaftEndX);
  return {
    height: of('shaft height', hasFeet, (mount) => mount.heightMm),
    shaftEnd: {
      name: facts.together === 'holes' ? 'shaft end from the drive-end holes' : 'shaft end from the face',
      isAsked: true,
      in: end(placed),
      out: placedOut === null ? undefined : end(placedOut),
    },
    along: of('holes along', hasFeet && facts.together === 'holes', (mount) => mount.alongMm),
    diameter: of('shaft diameter', true, (mount) => mount.shaftDiameterMm),
  };
}

function shapesOf(
  candidate: Mount,
  out: Mount | null,
  placed: Placed,
  placedOut: Placed | null,
  facts: MountFacts,
): Shape[] {
  const behind = out === null || placedOut === null ? [] : sideOutline(out, placedOut);
  return [
    ...baseShapes(candidate, out, facts),
    ...behind.map(({ part, points }) => polygon('out', part, points)),
    ...sideOutline(candidate, placed).map(({ part, points }) => polygon('in', part, points)),
    ...finsFromSide(placed),
    ...terminalBoxFromSide(candidate, placed),
    ...behind.map(({ part, points }) => polygon('out-edge', part, points)),
    ...hubShapes(candidate, placed, placedOut, facts),
    ...shimShapes(candidate, out),
    ...centreLines(candidate, out, placed, placedOut, facts),
  ];
}

/** The base lies under the failed motor's shims; where only the candidate's height is known, under its feet. */
function baseShapes(candidate: Mount, out: Mount | null, facts: MountFacts): Shape[] {
  const height = out === null ? candidate.heightMm : (out.heightMm ?? candidate.heightMm);
  if (height === null || facts.together === 'faces') return [];
  const along = Math.max(candidate.alongMm ?? 0, (out === null ? null : out.alongMm) ?? 0, height * 0.6);
  const shims = out === null || out.heightMm === null ? 0 : shimsDrawnMm(facts);
  const top = height + shims;
  const [x, width] = [-height * 0.75, along + height * 1.5];
  const base = polygon('base', 'base', rectangle(x, top, width, height * 0.15));
  if (shims === 0 || out === null || out.alongMm === null) return [base];
  const pads = padsOf(out.alongMm, height).map((pad) =>
    polygon('base', 'shims-present', rectangle(pad.x, height, pad.width, shims)),
  );
  return [base, ...pads];
}

/** New shims fill what the candidate is lower by, under each end of its feet. */
function shimShapes(candidate: Mount, out: Mount | null): Shape[] {
  const [low, high] = [candidate.heightMm, out === null ? null : out.heightMm];
  if (low === null || high === null || candidate.alongMm === null || candidate.feet === false || high <= low) return [];
  return padsOf(candidate.alongMm, low).map((pad) =>
    polygon('shim', 'shim', rectangle(pad.x, low, pad.width, high - low)),
  );
}

function padsOf(along: number, height: number) {
  const width = Math.min(height * 0.42, along * 0.4);
  return [
    { x: -PAD * height, width },
    { x: along + PAD * height - width, width },
  ];
}

/** The hub sits where the failed motor's shaft ends; its outside is nominal. */
function hubShapes(candidate: Mount, placed: Placed, placedOut: Placed | null, facts: MountFacts): Shape[] {
  const end = placedOut === null ? null : placedOut.shaftEndX;
  const length = facts.hub === null ? null : facts.hub.lengthMm;
  const bore = facts.hub === null ? null : facts.hub.boreMm;
  if (end === null || length === null || bore === null) return [];
  const r = bore * 1.3;
  const hub: Shape = polygon('hub', 'hub', rectangle(end, -r, length, 2 * r));
  const d = candidate.shaftDiameterMm;
  if (!facts.act.includes('bushing') || d === null || d >= bore || placed.shaftEndX === null) return [hub];
  const ring = (bore - d) / 2;
  return [
    hub,
    polygon('shim', 'bushing', rectangle(end, -bore / 2, length, ring)),
    polygon('shim', 'bushing', rectangle(end, d / 2, length, ring)),
  ];
}

function centreLines(
  candidate: Mount,
  out: Mount | null,
  placed: Placed,
  placedOut: Placed | null,
  facts: MountFacts,
): Shape[] {
  const ends = [placed, placedOut].flatMap((one) => (one === null ? [] : [one.shaftEndX, one.body?.endX]));
  const known = ends.filter((x) => typeof x === 'number');
  const lines: Shape[] = [];
  if (known.length > 0) {
    const over = (Math.max(...known) - Math.min(...known)) * 0.04;
    const [from, to] = [Math.min(...known) - over, Math.max(...known) + over];
    lines.push({ kind: 'line', role: 'centre', part: 'axis', from: { x: from, y: 0 }, to: { x: to, y: 0 } });
  }
  const height = candidate.heightMm ?? (out === null ? null : out.heightMm);
  const along = candidate.alongMm ?? (out === null ? null : out.alongMm);
  if (height === null || along === null || facts.together === 'faces') return lines;
  for (const x of [0, along])
    lines.push({
      kind: 'line',
      role: 'centre',
      part: 'foot-hole',
      from: { x, y: height * 0.72 },
      to: { x, y: height * 1.28 },
    });
  return lines;
}

function linesOf(
  figures: ReturnType<typeof figuresOf>,
  content: { x: number; y: number; width: number; height: number },
  textMm: number,
  facts: MountFacts,
): DimensionLine[] {
  const { height, shaftEnd, along } = figures;
  const [bottom, right] = [content.y + content.height, content.x + content.width];
  const lines: DimensionLine[] = [];
  const level = (figure: Figure, x1: number, x2: number, at: number) =>
    lines.push({
      name: figure.name,
      direction: 'level',
      from: { x: x1, y: figure === shaftEnd ? shaftRadius + CLEAR : bottom - textMm * 0.4 },
      to: { x: x2, y: bottom - textMm * 0.4 },
      at,
      ...figuresOnLine(figure, facts.unit),
    });
  const shaftRadius = (drawnLength(figures.diameter) ?? 0) / 2;
  const row = bottom + textMm * 2.2;
  const toEnd = drawnLength(shaftEnd);
  const length = drawnLength(along);
  if (toEnd !== null) level(shaftEnd, -toEnd, 0, row);
  if (along.isAsked && length !== null) {
    const both = figuresOnLine(along, facts.unit);
    const ends = figuresOnLine(shaftEnd, facts.unit);
    // Two figures that do not fit side by side stand in two rows.
    const fit = fitsOnLine(both, length, textMm) && (toEnd === null || fitsOnLine(ends, toEnd, textMm));
    level(along, 0, length, fit ? row : row + textMm * 2.8);
  }
  const up = drawnLength(height);
  if (height.isAsked && up !== null)
    lines.push({
      name: height.name,
      direction: 'upright',
      from: { x: right + textMm * 0.2, y: 0 },
      to: { x: right + textMm * 0.2, y: up },
      at: right + textMm * 2,
      ...figuresOnLine(height, facts.unit),
    });
  return lines;
}
