import type { Face } from '@/lib/standards/dimension';
import type { Point, Shape } from './drawing';
import { faceHoles } from './face-holes';
import type { Mount } from './mount';
import { type MountFacts, shimsDrawnMm } from './mount-facts';
import { PAD, polygon, rectangle } from './outline';
import { place } from './place';
import { type UnderFeet, underShapes } from './under-feet';

/** All that is drawn of the faces from the drive end, the hindmost first. */
export function faceShapes(candidate: Mount, out: Mount | null, under: UnderFeet | null, facts: MountFacts): Shape[] {
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
    ...(under === null ? [] : underShapes(under, padsOf(candidate, out, under))),
    ...feetOf(candidate).map((points) => polygon('in', 'foot', points)),
    ...ring('in', 'body', radius),
    ...boxOnBody(candidate, radius),
    ...ownFace(face),
    ...(out === null ? [] : feetOf(out).map((points) => polygon('out-edge', 'foot', points))),
    ...ring('out-edge', 'body', radiusOut),
    ...oldFaceShapes(old, facts),
    ...ring('in', 'shaft', half(candidate.shaftDiameterMm)),
    ...keyOf(candidate),
    line('axis', { x: -widest * 1.12, y: 0 }, { x: widest * 1.12, y: 0 }),
    line('axis', { x: 0, y: -widest * 1.08 }, { x: 0, y: widest * 1.08 }),
  ];
}

const bodyRadius = (mount: Mount, facts: MountFacts) => {
  const { body } = place(mount, facts.together, 0);
  return body === null ? null : body.radiusMm;
};
const half = (diameter: number | null) => (diameter === null ? null : diameter / 2);

function ring(role: Shape['role'], part: Shape['part'], radiusMm: number | null): Shape[] {
  return radiusMm === null ? [] : [{ kind: 'circle', role, part, centre: { x: 0, y: 0 }, radiusMm }];
}

const line = (part: Shape['part'], from: Point, to: Point): Shape => ({ kind: 'line', role: 'centre', part, from, to });

function ownFace(face: Face | null): Shape[] {
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

/** Under both feet; a transition base runs under both motors' feet. */
function padsOf(candidate: Mount, out: Mount | null, { work }: UnderFeet) {
  const own = padsUnder(candidate);
  return work === 'transition-base' ? [...own, ...padsUnder(out)] : own.length === 0 ? padsUnder(out) : own;
}

function padsUnder(mount: Mount | null) {
  if (mount === null || mount.heightMm === null || mount.acrossMm === null) return [];
  const { heightMm: h, acrossMm: across } = mount;
  const [inner, width] = [across / 2 - PAD * h * 1.3, PAD * h * 2.3];
  return [-inner - width, inner].map((x) => ({ x, width }));
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
