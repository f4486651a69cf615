import { drawnLength, figuresOnLine } from './dimension-line';
import type { Detail, DimensionLine, Drawing, Label, Point, Shape } from './drawing';
import { boxOf, frameDetail, frameView, type ViewFrame } from './frame-view';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { PAD, polygon, rectangle, shaftOutline } from './outline';
import { place } from './place';
import { sentenceOf } from './sentence';
import { leaderFrom, type NextLetter } from './side-details';

/** The feet from above: the two hole patterns, drive-end holes together. Null where neither motor has feet to show. */
export function feetView(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  nextLetter: NextLetter,
): Drawing | null {
  if (candidate.feet === false || facts.together === 'faces') return null;
  const figures = figuresOf(candidate, out);
  const shapes = shapesOf(candidate, out, facts);
  if (shapes.every(({ role }) => role === 'centre')) return null; // a line through nothing is no view
  const content = boxOf(shapes);
  const frame = frameView(content, { left: 1.4, right: 4, top: 4.2, bottom: 3.8 });
  return {
    caption: 'Feet from above',
    viewBox: frame.viewBox,
    textMm: frame.textMm,
    shapes,
    dimensions: linesOf(figures, content, frame.textMm, facts),
    labels: holeLabels(candidate, out, facts, content, frame.textMm),
    details: holeDetail(candidate, out, facts, frame, nextLetter),
    notDrawn: Object.values(figures)
      .filter((figure) => drawnLength(figure) === null)
      .map((figure) => figure.name),
    sentence: sentenceOf(
      'Feet from above',
      candidate.name,
      out === null ? null : out.name,
      Object.values(figures),
      facts,
    ),
  };
}

interface Figure {
  name: string;
  in: number | null;
  out: number | null | undefined;
  isAsked: true;
}

function figuresOf(candidate: Mount, out: Mount | null): Record<'across' | 'along' | 'shaftEnd' | 'hole', Figure> {
  const of = (name: string, read: (mount: Mount) => number | null): Figure => ({
    name,
    isAsked: true,
    in: read(candidate),
    out: out === null ? undefined : read(out),
  });
  return {
    across: of('holes across', (mount) => mount.acrossMm),
    along: of('holes along', (mount) => mount.alongMm),
    shaftEnd: of('shaft end from the drive-end holes', (mount) => mount.toShaftEndMm),
    hole: of('foot hole diameter', (mount) => mount.footHoleMm),
  };
}

function shapesOf(candidate: Mount, out: Mount | null, facts: MountFacts): Shape[] {
  const [own, old] = [outlineOf(candidate), out === null ? [] : outlineOf(out)];
  const centre: Shape[] = [];
  const ends = [...own, ...old].flatMap(({ points }) => points.map(({ x }) => x));
  if (ends.length > 0)
    centre.push({
      kind: 'line',
      role: 'centre',
      part: 'axis',
      from: { x: Math.min(...ends) - 8, y: 0 },
      to: { x: Math.max(...ends) + 8, y: 0 },
    });
  return [
    ...old.map(({ part, points }) => polygon('out', part, points)),
    ...bodyOf(candidate),
    ...own.map(({ part, points }) => polygon('in', part, points)),
    ...old.map(({ part, points }) => polygon('out-edge', part, points)),
    ...holesOf(candidate).map((centre): Shape => circle('hole', centre, holeRadius(candidate))),
    ...(out === null
      ? []
      : patternOf(out.acrossMm, out.alongMm).map(
          (centre): Shape =>
            circle(facts.act.includes('foot-holes') ? 'act-line' : 'out-edge', centre, holeRadius(out)),
        )),
    ...boltShapes(out, facts),
    ...patternOf(candidate.acrossMm, candidate.alongMm).flatMap(cross(holeRadius(candidate))),
    ...centre,
  ];
}

const circle = (role: 'hole' | 'out-edge' | 'act-line', centre: Point, radiusMm: number): Shape => ({
  kind: 'circle',
  role,
  part: 'foot-hole',
  centre,
  radiusMm,
});

/** The bolts stand where the failed motor's holes were. */
function boltShapes(out: Mount | null, { boltMm }: MountFacts): Shape[] {
  if (out === null || boltMm === null) return [];
  return patternOf(out.acrossMm, out.alongMm).map(
    (centre): Shape => ({ kind: 'circle', role: 'out', part: 'bolt', centre, radiusMm: boltMm / 2 }),
  );
}

/** Nominal: a hole of no known diameter is drawn as its centre, a ring of 1 mm. */
const holeRadius = (mount: Mount) => (mount.footHoleMm === null ? 0.5 : mount.footHoleMm / 2);

function cross(radius: number) {
  return ({ x, y }: Point): Shape[] => {
    const reach = radius * 2 + 1;
    return [
      { kind: 'line', role: 'in-hair', part: 'foot-hole', from: { x: x - reach, y }, to: { x: x + reach, y } },
      { kind: 'line', role: 'in-hair', part: 'foot-hole', from: { x, y: y - reach }, to: { x, y: y + reach } },
    ];
  };
}

/** The four holes of one pattern; none where a distance is not known. */
export function patternOf(acrossMm: number | null, alongMm: number | null): Point[] {
  if (acrossMm === null || alongMm === null) return [];
  return [-acrossMm / 2, acrossMm / 2].flatMap((y) => [0, alongMm].map((x) => ({ x, y })));
}

/** The motor's own pattern and those its feet also have; a hole two patterns share is drawn once. */
function holesOf({ acrossMm, alongMm, acrossOthersMm, alongOthersMm }: Mount): Point[] {
  const all = [acrossMm, ...acrossOthersMm].flatMap((across) =>
    [alongMm, ...alongOthersMm].flatMap((along) => patternOf(across, along)),
  );
  const seen = new Set<string>();
  return all.filter(({ x, y }) => {
    const key = `${x} ${y}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** Nominal pads around the holes, and the shaft. */
function outlineOf(mount: Mount) {
  const shaft = shaftOutline(mount, place(mount, 'holes'));
  const { acrossMm: across, alongMm } = mount;
  if (across === null || alongMm === null) return shaft === null ? [] : [shaft];
  const along = Math.max(alongMm, ...mount.alongOthersMm);
  const widest = Math.max(across, ...mount.acrossOthersMm);
  const pad = PAD * (mount.heightMm ?? across * 0.6);
  const inner = Math.min(across, ...mount.acrossOthersMm) / 2 - pad;
  const depth = widest / 2 + pad - inner;
  const pads = [-widest / 2 - pad, inner].map((y) => ({
    part: 'foot' as const,
    points: rectangle(-pad, y, along + 2 * pad, depth),
  }));
  return shaft === null ? pads : [...pads, shaft];
}

function bodyOf(candidate: Mount): Shape[] {
  const { body, faceX } = place(candidate, 'holes');
  const shapes: Shape[] = [];
  if (body !== null) {
    const { frontX, backX, radiusMm: r } = body;
    const corner = { x: frontX, y: -r };
    shapes.push(polygon('in-hair', 'body', rectangle(corner.x, corner.y, backX - frontX, 2 * r)));
  }
  const outside = candidate.face === null ? null : candidate.face.outsideMm;
  if (faceX !== null && outside !== null)
    shapes.push(polygon('in-thin', 'face', rectangle(faceX, -outside / 2, outside * 0.07, outside)));
  return shapes;
}

function linesOf(
  { across, along, shaftEnd }: ReturnType<typeof figuresOf>,
  content: { x: number; y: number; width: number; height: number },
  textMm: number,
  facts: MountFacts,
): DimensionLine[] {
  const half = (drawnLength(across) ?? 0) / 2;
  const lines: DimensionLine[] = [];
  const length = drawnLength(along);
  if (length !== null)
    lines.push({
      name: along.name,
      direction: 'level',
      from: { x: 0, y: half },
      to: { x: length, y: half },
      at: content.y + content.height + textMm * 1.9,
      ...figuresOnLine(along, facts.unit),
    });
  const toEnd = drawnLength(shaftEnd);
  if (toEnd !== null)
    lines.push({
      name: shaftEnd.name,
      direction: 'level',
      from: { x: -toEnd, y: -4 },
      to: { x: 0, y: -half },
      at: content.y - textMm * 1.7,
      ...figuresOnLine(shaftEnd, facts.unit),
    });
  const width = drawnLength(across);
  if (width !== null) {
    const x = drawnLength(along) ?? 0;
    lines.push({
      name: across.name,
      direction: 'upright',
      from: { x, y: -width / 2 },
      to: { x, y: width / 2 },
      at: content.x + content.width + textMm * 1.9,
      ...figuresOnLine(across, facts.unit),
    });
  }
  return lines;
}

/** The diameters of the holes, on a leader from the drive-end hole at the bottom left. */
function holeLabels(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  content: { x: number; y: number; height: number },
  textMm: number,
): Label[] {
  const hole = patternOf(candidate.acrossMm, candidate.alongMm).find(({ x, y }) => x === 0 && y > 0);
  if (hole === undefined) return [];
  const at = { x: content.x, y: content.y + content.height + textMm * 1.55 };
  const text = `Ø${lengthText(candidate.footHoleMm, facts.unit)}`;
  const own: Label = {
    text,
    at,
    anchor: 'start',
    tone: 'in',
    leader: [hole, { x: content.x + textMm * 3, y: at.y - textMm * 0.35 }],
  };
  if (out === null) return [own];
  const old = `Ø${lengthText(out.footHoleMm, facts.unit)}`;
  return [own, { text: old, at: { x: at.x, y: at.y + textMm * 1.15 }, anchor: 'start', tone: 'out', leader: [] }];
}

/** One hole enlarged, where the two patterns differ by less than can be seen. */
function holeDetail(
  candidate: Mount,
  out: Mount | null,
  facts: MountFacts,
  { textMm, unseenMm }: ViewFrame,
  nextLetter: NextLetter,
): Detail[] {
  const spot = farHole(candidate);
  const old = out === null ? null : farHole(out);
  const hole = candidate.footHoleMm ?? (out === null ? null : out.footHoleMm);
  if (spot === null || old === null || hole === null) return [];
  const off = Math.hypot(spot.x - old.x, spot.y - old.y);
  if (off < 0.005 || off > unseenMm) return [];
  const letter = nextLetter();
  const bolt = facts.boltMm === null ? '?' : `Ø${lengthText(facts.boltMm, facts.unit)}`;
  const own = candidate.footHoleMm === null ? '?' : `Ø${lengthText(candidate.footHoleMm, facts.unit)}`;
  const ring = Math.max(hole * 0.9, textMm * 0.8);
  return [
    {
      letter,
      caption: `${letter}, foot hole`,
      spot: { centre: spot, radiusMm: ring },
      leader: leaderFrom(spot, ring / 0.85, 1, -1),
      ...frameDetail(spot, hole * 2.2),
      dimensions: [],
      labels: [],
      figures: `hole ${own}, bolt ${bolt}`,
      sentence: `Detail ${letter}: with the drive-end holes together the far holes lie ${lengthText(off, facts.unit)} ${facts.unit} apart; hole ${own}, bolt ${bolt}.`,
    },
  ];
}

const farHole = ({ acrossMm, alongMm }: Mount): Point | null => patternOf(acrossMm, alongMm)[1] ?? null;
