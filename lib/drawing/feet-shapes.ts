import type { Part, Point, Role, Shape } from './drawing';
import { holesOf, patternOf } from './hole-pattern';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { PAD, polygon, rectangle, shaftOutline } from './outline';
import { place } from './place';

/** All that is drawn from above, the hindmost first. `slide` is where the candidate's drive-end holes lie. */
export function feetShapes(candidate: Mount, out: Mount | null, slide: number, facts: MountFacts): Shape[] {
  const [own, old] = [outlineOf(candidate, slide), out === null ? [] : outlineOf(out, 0)];
  const ends = [...own, ...old].flatMap(({ points }) => points.map(({ x }) => x));
  const pattern = patternOf(candidate.acrossMm, candidate.alongMm, slide);
  return [
    ...plate(own, old, facts),
    ...old.map(({ part, points }) => polygon('out', part, points)),
    ...bodyOf(candidate, slide),
    ...own.map(({ part, points }) => polygon('in', part, points)),
    ...old.map(({ part, points }) => polygon('out-edge', part, points)),
    ...holesOf(candidate, slide).map((centre) => circle('hole', 'foot-hole', centre, holeRadius(candidate.footHoleMm))),
    ...oldHoles(out, facts),
    ...newHoles(pattern, out, facts),
    ...pattern.flatMap(cross(holeRadius(candidate.footHoleMm))),
    ...(ends.length === 0 ? [] : [axis(Math.min(...ends) - 8, Math.max(...ends) + 8)]),
  ];
}

/** What is done to the base for the holes, in words. */
export function feetWords({ work, act }: MountFacts): string[] {
  const says: string[] = [];
  if (work.includes('transition-base'))
    says.push('A transition base lies under both, with holes for the old bolts and new holes for this motor.');
  if (work.includes('slot-or-redrill')) says.push('The base is slotted or redrilled for its holes.');
  if (work.includes('move-base')) says.push('The base is drilled anew where the motor moves to.');
  if (doMiss({ work, act })) says.push('Holes and bolts miss each other.');
  return says;
}

/** The holes miss, and nothing is drilled anew for them. */
export const doMiss = ({ work, act }: Pick<MountFacts, 'work' | 'act'>): boolean =>
  act.includes('foot-holes') && !work.some(isDrilled);

const circle = (role: Role, part: Part, centre: Point, radiusMm: number): Shape => ({
  kind: 'circle',
  role,
  part,
  centre,
  radiusMm,
});

/** Nominal: a hole of no known diameter is drawn as its centre, a ring of 1 mm. */
const holeRadius = (diameterMm: number | null) => (diameterMm === null ? 0.5 : diameterMm / 2);

/** A transition base takes in both motors' feet; how far it stands out is nominal. */
function plate(own: readonly Outline[], old: readonly Outline[], { work }: MountFacts): Shape[] {
  const feet = [...own, ...old].filter(({ part }) => part === 'foot').flatMap(({ points }) => points);
  if (!work.includes('transition-base') || feet.length === 0) return [];
  const [xs, ys] = [feet.map(({ x }) => x), feet.map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return [polygon('act-line', 'plate', rectangle(x, y, Math.max(...xs) - x, Math.max(...ys) - y))];
}

/** The failed motor's holes and the bolts in them; where nothing is drilled anew, those that miss are where to act. */
function oldHoles(out: Mount | null, { act, boltMm, work }: MountFacts): Shape[] {
  if (out === null) return [];
  const role = doMiss({ work, act }) ? 'act-line' : 'out-edge';
  const centres = patternOf(out.acrossMm, out.alongMm, 0);
  return [
    ...centres.map((centre) => circle(role, 'foot-hole', centre, holeRadius(out.footHoleMm))),
    ...(boltMm === null ? [] : centres.map((centre) => circle('out', 'bolt', centre, boltMm / 2))),
  ];
}

const isDrilled = (id: string) => id === 'slot-or-redrill' || id === 'transition-base' || id === 'move-base';

/**
 * The bolts' new places under the candidate's holes; where the new one would run into the old one, a slot takes in both.
 * A bolt of unknown size is drawn as its centre.
 */
function newHoles(pattern: readonly Point[], out: Mount | null, { work, boltMm }: MountFacts): Shape[] {
  if (!work.some(isDrilled) || out === null) return [];
  const r = holeRadius(boltMm);
  const old = patternOf(out.acrossMm, out.alongMm, 0);
  return pattern.flatMap((to, i) => {
    const from = old[i];
    const apart = from === undefined ? null : Math.hypot(to.x - from.x, to.y - from.y);
    if (from === undefined || apart === null || apart > SLOT_TO * 2 * r || !work.includes('slot-or-redrill'))
      return [circle('act-line', 'new-hole', to, r)];
    return apart < 0.005 ? [] : [polygon('act-line', 'slot', slotOf(from, to, r))];
  });
}

/** Holes nearer than this many bolt diameters leave no metal between them. Common practice, no source. */
const SLOT_TO = 1.5;

/** The outline of a slot of radius `r` from one centre to another. */
function slotOf(from: Point, to: Point, r: number): Point[] {
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const half = (centre: Point, start: number) =>
    Array.from({ length: 9 }, (_, i) => {
      const angle = start + (i * Math.PI) / 8;
      return { x: centre.x + r * Math.cos(angle), y: centre.y + r * Math.sin(angle) };
    });
  return [...half(to, along - Math.PI / 2), ...half(from, along + Math.PI / 2)];
}

const axis = (from: number, to: number): Shape => ({
  kind: 'line',
  role: 'centre',
  part: 'axis',
  from: { x: from, y: 0 },
  to: { x: to, y: 0 },
});

function cross(radius: number) {
  return ({ x, y }: Point): Shape[] => {
    const reach = radius * 2 + 1;
    return [
      { kind: 'line', role: 'in-hair', part: 'foot-hole', from: { x: x - reach, y }, to: { x: x + reach, y } },
      { kind: 'line', role: 'in-hair', part: 'foot-hole', from: { x, y: y - reach }, to: { x, y: y + reach } },
    ];
  };
}

interface Outline {
  part: Part;
  points: Point[];
}

/** Nominal pads around the holes, and the shaft. */
function outlineOf(mount: Mount, holesX: number): Outline[] {
  const shaft = shaftOutline(mount, place(mount, 'holes', holesX));
  const { acrossMm: across, alongMm } = mount;
  if (across === null || alongMm === null) return shaft === null ? [] : [shaft];
  const along = Math.max(alongMm, ...mount.alongOthersMm);
  const widest = Math.max(across, ...mount.acrossOthersMm);
  const pad = PAD * (mount.heightMm ?? across * 0.6);
  const inner = Math.min(across, ...mount.acrossOthersMm) / 2 - pad;
  const depth = widest / 2 + pad - inner;
  const pads = [-widest / 2 - pad, inner].map((y) => ({
    part: 'foot' as const,
    points: rectangle(holesX - pad, y, along + 2 * pad, depth),
  }));
  return shaft === null ? pads : [...pads, shaft];
}

function bodyOf(candidate: Mount, holesX: number): Shape[] {
  const { body, faceX } = place(candidate, 'holes', holesX);
  const shapes: Shape[] = [];
  if (body !== null) {
    const { frontX, backX, radiusMm: r } = body;
    shapes.push(polygon('in-hair', 'body', rectangle(frontX, -r, backX - frontX, 2 * r)));
  }
  const outside = candidate.face === null ? null : candidate.face.outsideMm;
  if (faceX !== null && outside !== null)
    shapes.push(polygon('in-thin', 'face', rectangle(faceX, -outside / 2, outside * 0.07, outside)));
  return shapes;
}
