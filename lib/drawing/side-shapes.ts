import type { Shape } from './drawing';
import type { Mount } from './mount';
import { type MountFacts, shimsDrawnMm } from './mount-facts';
import { finsFromSide, PAD, polygon, rectangle, sideOutline, terminalBoxFromSide } from './outline';
import { type Ends, hubShapes } from './shaft-end';
import { type UnderFeet, underShapes } from './under-feet';

/** All that is drawn from the side, the hindmost first. */
export function sideShapes(ends: Ends, under: UnderFeet | null): Shape[] {
  const { candidate, out, placed, placedOut, facts } = ends;
  const behind = out === null || placedOut === null ? [] : sideOutline(out, placedOut);
  const pads = under === null ? [] : padsOf(candidate, out, under, placed.holesX);
  return [
    ...baseShapes(ends),
    ...(under === null ? shimsOfOld(out, facts) : []),
    ...behind.map(({ part, points }) => polygon('out', part, points)),
    ...(under === null ? [] : underShapes(under, pads.length === 0 ? padsUnder(out, 0) : pads)),
    ...sideOutline(candidate, placed).map(({ part, points }) => polygon('in', part, points)),
    ...finsFromSide(placed),
    ...terminalBoxFromSide(candidate, placed),
    ...behind.map(({ part, points }) => polygon('out-edge', part, points)),
    ...hubShapes(ends),
    ...centreLines(ends),
  ];
}

/** The base lies under the failed motor's shims; where only the candidate's height is known, under its feet. */
function baseShapes({ candidate, out, facts, placed }: Ends): Shape[] {
  const height = out === null ? candidate.heightMm : (out.heightMm ?? candidate.heightMm);
  if (height === null || facts.together === 'faces') return [];
  const old = out === null ? null : out.alongMm;
  const front = Math.min(0, placed.holesX);
  const back = Math.max(placed.holesX + (candidate.alongMm ?? 0), old ?? 0, height * 0.6);
  const top = height + (out === null || out.heightMm === null ? 0 : shimsDrawnMm(facts));
  const beyond = height * 0.75;
  return [polygon('base', 'base', rectangle(front - beyond, top, back - front + 2 * beyond, height * 0.15))];
}

/** Where nothing is known of the candidate's feet, the shims there now lie under the failed motor's. */
function shimsOfOld(out: Mount | null, facts: MountFacts): Shape[] {
  const height = out === null ? null : out.heightMm;
  const shims = shimsDrawnMm(facts);
  if (height === null || shims === 0 || facts.together === 'faces') return [];
  return padsUnder(out, 0).map(({ x, width }) => polygon('base', 'shims-present', rectangle(x, height, width, shims)));
}

/** Under the ends of the feet; a ground block is as long as the foot, a plate runs under both motors' holes. */
function padsOf(candidate: Mount, out: Mount | null, { work, baseY }: UnderFeet, holesX: number) {
  const pads = padsUnder(candidate, holesX);
  if (work !== 'transition-base' || pads.length === 0) return pads;
  const margin = PAD * baseY;
  const old = out === null || out.alongMm === null ? 0 : out.alongMm;
  const [front, back] = [Math.min(0, holesX), Math.max(holesX + (candidate.alongMm ?? 0), old)];
  return [...pads, { x: front - margin, width: back - front + 2 * margin }];
}

function padsUnder(mount: Mount | null, holesX: number) {
  if (mount === null || mount.heightMm === null || mount.alongMm === null) return [];
  const { heightMm: height, alongMm: along } = mount;
  const width = Math.min(height * 0.42, along * 0.4);
  return [
    { x: holesX - PAD * height, width },
    { x: holesX + along + PAD * height - width, width },
  ];
}

/** The axis, and the foot holes of what goes in; a transition base shows those of the old bolts as well. */
function centreLines({ candidate, out, placed, placedOut, facts }: Ends): Shape[] {
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
  const hole = (x: number, top: number, bottom: number): Shape => ({
    kind: 'line',
    role: 'centre',
    part: 'foot-hole',
    from: { x, y: top },
    to: { x, y: bottom },
  });
  const bottom = Math.max(height, (out === null ? null : out.heightMm) ?? height) * 1.2 + shimsDrawnMm(facts);
  const old = out === null || !facts.work.includes('transition-base') ? null : out;
  return [
    ...lines,
    ...[0, along].map((x) => hole(placed.holesX + x, height * 0.72, bottom)),
    ...(old === null || old.alongMm === null ? [] : [0, old.alongMm].map((x) => hole(x, height, bottom))),
  ];
}
