import type { Face } from '@/lib/standards/dimension';
import { drawnLength } from './dimension-line';
import type { Drawing, Point, Shape } from './drawing';
import { heightLine, overhangLine, uprightFigures } from './face-heights';
import { faceLabels } from './face-labels';
import { boxOf, frameView } from './frame-view';
import type { Mount } from './mount';
import { type MountFacts, shimsDrawnMm } from './mount-facts';
import { PAD, polygon, rectangle } from './outline';
import { place } from './place';
import { sentenceOf } from './sentence';

/** The face from the drive end, feet down: pitch circle, spigot, outside, height over the foot plane. */
export function faceView(candidate: Mount, out: Mount | null, facts: MountFacts): Drawing | null {
  if (candidate.face === null && (out === null || out.face === null)) return null;
  const shapes = shapesOf(candidate, out, facts);
  if (shapes.length === 0) return null;
  const content = boxOf(shapes);
  const frame = frameView(content, { left: 3.6, right: 4.4, top: 4.4, bottom: 0.6 });
  const figures = figuresOf(candidate, out, facts);
  const upright = heightLine(candidate, out, content, frame.textMm, facts);
  const overhang = overhangLine(candidate, out, content, frame.textMm, facts);
  return {
    caption: 'Face from the drive end',
    viewBox: frame.viewBox,
    textMm: frame.textMm,
    shapes,
    dimensions: overhang === null ? upright : [...upright, overhang.line],
    labels: [
      ...faceLabels(candidate, out, frame.viewBox, frame.textMm, facts),
      ...(overhang === null ? [] : overhang.labels),
    ],
    details: [],
    notDrawn: figures.filter((figure) => figure.isAsked && drawnLength(figure) === null).map((figure) => figure.name),
    sentence: sentenceOf('Face from the drive end', candidate.name, out === null ? null : out.name, figures, facts),
  };
}

function figuresOf(candidate: Mount, out: Mount | null, facts: MountFacts) {
  const { height, over } = uprightFigures(candidate, out, facts);
  const of = (name: string, read: (face: Face) => number | null) => ({
    name,
    isAsked: true,
    in: candidate.face === null ? null : read(candidate.face),
    out: out === null ? undefined : out.face === null ? null : read(out.face),
  });
  return [
    of('pitch circle', (face) => face.pitchCircleMm),
    of('spigot', (face) => face.spigotMm),
    of('outside', (face) => face.outsideMm),
    { name: 'shaft height', isAsked: height !== null, in: height?.in ?? null, out: height?.out },
    { name: 'face over the foot plane', isAsked: over !== null, in: over?.in ?? null, out: over?.out },
  ];
}

function shapesOf(candidate: Mount, out: Mount | null, facts: MountFacts): Shape[] {
  const [radius, radiusOut] = [bodyRadius(candidate, facts), out === null ? null : bodyRadius(out, facts)];
  const face = candidate.face;
  const old = out === null ? null : out.face;
  const widest = Math.max(
    ...[radius, radiusOut, half(face === null ? null : face.outsideMm), half(old === null ? null : old.outsideMm)].map(
      (r) => r ?? 0,
    ),
  );
  if (widest === 0) return [];
  return [
    ...baseOf(candidate, out, facts),
    ...(out === null ? [] : feetOf(out).map((points) => polygon('out', 'foot', points))),
    ...ring('out', 'body', radiusOut),
    ...ring('out', 'face', half(old === null ? null : old.outsideMm)),
    ...feetOf(candidate).map((points) => polygon('in', 'foot', points)),
    ...ring('in', 'body', radius),
    ...boxOnBody(candidate, radius),
    ...faceShapes(face),
    ...(out === null ? [] : feetOf(out).map((points) => polygon('out-edge', 'foot', points))),
    ...ring('out-edge', 'body', radiusOut),
    ...oldFaceShapes(old, facts),
    ...ring('in', 'shaft', half(candidate.shaftDiameterMm)),
    ...keyOf(candidate),
    ...shims(candidate, out),
    line('axis', { x: -widest * 1.12, y: 0 }, { x: widest * 1.12, y: 0 }),
    line('axis', { x: 0, y: -widest * 1.08 }, { x: 0, y: widest * 1.08 }),
  ];
}

const bodyRadius = (mount: Mount, facts: MountFacts) => {
  const { body } = place(mount, facts.together);
  return body === null ? null : body.radiusMm;
};
const half = (diameter: number | null) => (diameter === null ? null : diameter / 2);

function ring(role: Shape['role'], part: Shape['part'], radiusMm: number | null): Shape[] {
  return radiusMm === null ? [] : [{ kind: 'circle', role, part, centre: { x: 0, y: 0 }, radiusMm }];
}

const line = (part: Shape['part'], from: Point, to: Point): Shape => ({ kind: 'line', role: 'centre', part, from, to });

function faceShapes(face: Face | null): Shape[] {
  if (face === null) return [];
  return [
    ...ring('in', 'face', half(face.outsideMm)),
    ...ring('in-thin', 'spigot', half(face.spigotMm)),
    ...ring('centre', 'pitch-circle', half(face.pitchCircleMm)),
    ...faceHoles(face).map((hole): Shape => ({ kind: 'circle', role: 'hole', part: 'face-hole', ...hole })),
  ];
}

function oldFaceShapes(face: Face | null, facts: MountFacts): Shape[] {
  if (face === null) return [];
  return [
    ...ring('out-edge', 'face', half(face.outsideMm)),
    ...ring('out-edge', 'spigot', half(face.spigotMm)),
    ...faceHoles(face).map((hole): Shape => {
      const role = facts.act.includes('face') ? 'act-line' : 'out-edge';
      return { kind: 'circle', role, part: 'face-hole', ...hole };
    }),
  ];
}

/** The holes on their pitch circle, none on an axis; a thread is drawn by its nominal size. */
export function faceHoles(face: Face): { centre: Point; radiusMm: number }[] {
  const { pitchCircleMm, holes, hole } = face;
  if (pitchCircleMm === null || holes === null || hole === null) return [];
  const diameter = 'throughMm' in hole ? hole.throughMm : threadMm(hole.thread);
  if (diameter === null) return [];
  return Array.from({ length: holes }, (_, i) => {
    const angle = ((i + 0.5) * 2 * Math.PI) / holes;
    return {
      centre: { x: (pitchCircleMm / 2) * Math.cos(angle), y: (pitchCircleMm / 2) * Math.sin(angle) },
      radiusMm: diameter / 2,
    };
  });
}

/** Nominal diameter of a thread written "M10", "M10 x 1.5", "3/8-16" or "1/2-13"; null when written otherwise. */
export function threadMm(thread: string): number | null {
  const metric = /^M(\d+(?:\.\d+)?)/.exec(thread);
  if (metric?.[1] !== undefined) return Number(metric[1]);
  const inch = /^(\d{1,2})\/(\d{1,2})-/.exec(thread);
  if (inch?.[1] === undefined || inch[2] === undefined) return null;
  return (Number(inch[1]) / Number(inch[2])) * 25.4;
}

function baseOf(candidate: Mount, out: Mount | null, facts: MountFacts): Shape[] {
  const height = out === null ? candidate.heightMm : (out.heightMm ?? candidate.heightMm);
  if (height === null || facts.together === 'faces') return [];
  const across = candidate.acrossMm ?? (out === null ? null : out.acrossMm) ?? height * 1.6;
  const [reach, top] = [across / 2 + height * 0.45, height + shimsDrawnMm(facts)];
  return [polygon('base', 'base', rectangle(-reach, top, 2 * reach, height * 0.14))];
}

/** Nominal feet around the holes, by the motor's own height and width across the holes. */
function feetOf({ feet, heightMm: h, acrossMm: across }: Mount): Point[][] {
  if (feet === false || h === null || across === null) return [];
  const [outer, inner, thick] = [across / 2 + PAD * h, across / 2 - PAD * h * 1.3, 0.12 * h];
  return [1, -1].map((side) => [
    { x: side * outer, y: h },
    { x: side * inner, y: h },
    { x: side * inner * 0.62, y: h * 0.8 },
    { x: side * (outer - h * 0.3), y: h * 0.45 },
    { x: side * (outer - h * 0.2), y: h - thick },
    { x: side * outer, y: h - thick },
  ]);
}

function shims(candidate: Mount, out: Mount | null): Shape[] {
  const [low, high, across] = [candidate.heightMm, out === null ? null : out.heightMm, candidate.acrossMm];
  if (low === null || high === null || across === null || candidate.feet === false || high <= low) return [];
  const [inner, width] = [across / 2 - PAD * low * 1.3, PAD * low * 2.3];
  return [-inner - width, inner].map((x) => polygon('shim', 'shim', rectangle(x, low, width, high - low)));
}

/** Seen from the drive end: left is left. */
function boxOnBody({ terminalBox }: Mount, radius: number | null): Shape[] {
  if (radius === null || terminalBox === null) return [];
  const [half, deep] = [radius * 0.36, radius * 0.32];
  switch (terminalBox) {
    case 'left':
      return [polygon('in', 'terminal-box', rectangle(-radius - deep, -half, deep * 1.2, 2 * half))];
    case 'right':
      return [polygon('in', 'terminal-box', rectangle(radius - deep * 0.2, -half, deep * 1.2, 2 * half))];
    case 'top':
      return [polygon('in', 'terminal-box', rectangle(-half, -radius - deep, 2 * half, deep * 1.2))];
  }
}

function keyOf({ shaftDiameterMm: d, keyWidthMm: key }: Mount): Shape[] {
  if (d === null || key === null) return [];
  return [polygon('in-thin', 'key', rectangle(-key / 2, -d / 2 - key * 0.4, key, key))];
}
