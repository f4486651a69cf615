import type { Part, Point, Polygon, Role, Shape } from './drawing';
import type { Mount } from './mount';
import type { Placed } from './place';

/** Nominal pads of the feet beyond the outer holes, and their thickness, as shares of the shaft height. */
export const PAD = 0.17;
const PAD_THICK = 0.12;
const PLATE_THICK = 0.07;

/** The silhouettes of one motor from the side, the ones behind first. */
export function sideOutline(mount: Mount, placed: Placed): { part: Part; points: Point[] }[] {
  return [
    footFromSide(mount, placed),
    bodyFromSide(placed),
    faceFromSide(mount, placed),
    shaftOutline(mount, placed),
  ].filter((outline) => outline !== null);
}

/** A silhouette as what goes in, or as what goes out: its hatched ground or its dashed edge. */
export const polygon = (role: Role, part: Part, points: readonly Point[]): Polygon => ({
  kind: 'polygon',
  role,
  part,
  points,
});

export const rectangle = (x: number, y: number, width: number, height: number): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

/** The shaft from its end to the shoulder, or to the nominal body where no shoulder is known. */
export function shaftOutline(mount: Mount, placed: Placed): { part: Part; points: Point[] } | null {
  const { shaftEndX, shoulderX, body } = placed;
  const until = shoulderX ?? (body === null ? null : body.frontX);
  if (mount.shaftDiameterMm === null || shaftEndX === null || until === null) return null;
  const r = mount.shaftDiameterMm / 2;
  return { part: 'shaft', points: rectangle(shaftEndX, -r, until - shaftEndX, 2 * r) };
}

function footFromSide(mount: Mount, { holesX: x }: Placed): { part: Part; points: Point[] } | null {
  const { heightMm: h, alongMm: along } = mount;
  if (mount.feet === false || h === null || along === null) return null;
  const [pad, thick] = [PAD * h, PAD_THICK * h];
  const web = { front: x - pad * 0.4, back: x + along + pad * 0.4, top: h * 0.72 };
  return {
    part: 'foot',
    points: [
      { x: x - pad, y: h },
      { x: x + along + pad, y: h },
      { x: x + along + pad, y: h - thick },
      { x: web.back, y: h - thick },
      { x: web.back - pad * 0.5, y: web.top },
      { x: web.front + pad * 0.5, y: web.top },
      { x: web.front, y: h - thick },
      { x: x - pad, y: h - thick },
    ],
  };
}

function bodyFromSide({ body, shoulderX }: Placed): { part: Part; points: Point[] } | null {
  if (body === null) return null;
  const { frontX, backX, endX, radiusMm: r } = body;
  const nose =
    shoulderX === null || shoulderX >= frontX
      ? []
      : [
          { x: shoulderX, y: -r * 0.36 },
          { x: shoulderX + (frontX - shoulderX) * 0.3, y: -r * 0.42 },
          { x: shoulderX + (frontX - shoulderX) * 0.55, y: -r * 0.72 },
        ];
  const upper = [
    ...nose,
    { x: frontX, y: -r * 0.94 },
    { x: frontX + r * 0.03, y: -r },
    { x: backX, y: -r },
    { x: backX, y: -r * 0.97 },
    { x: endX - r * 0.08, y: -r * 0.94 },
    { x: endX - r * 0.02, y: -r * 0.87 },
    { x: endX, y: -r * 0.74 },
  ];
  return { part: 'body', points: [...upper, ...upper.map(({ x, y }) => ({ x, y: -y })).reverse()] };
}

function faceFromSide(mount: Mount, { faceX }: Placed): { part: Part; points: Point[] } | null {
  const outside = mount.face === null ? null : mount.face.outsideMm;
  if (faceX === null || outside === null) return null;
  return { part: 'face', points: rectangle(faceX, -outside / 2, outside * PLATE_THICK, outside) };
}

/** Fins and the end of the barrel: only the candidate gets them. */
export function finsFromSide({ body }: Placed): Shape[] {
  if (body === null) return [];
  const { frontX, backX, radiusMm: r } = body;
  const fins = [-0.82, -0.62, -0.38, -0.13, 0.13, 0.38, 0.62, 0.82].map(
    (share): Shape => ({
      kind: 'line',
      role: 'in-hair',
      part: 'fin',
      from: { x: frontX + r * 0.08, y: share * r },
      to: { x: backX - r * 0.05, y: share * r },
    }),
  );
  const joints = [frontX, backX].map(
    (x): Shape => ({ kind: 'line', role: 'in-thin', part: 'body', from: { x, y: -r * 0.94 }, to: { x, y: r * 0.94 } }),
  );
  return [...fins, ...joints];
}

/** The box where the plate tells its side: from here a box on the right faces us and one on the left is hidden. */
export function terminalBoxFromSide(mount: Mount, { body }: Placed): Polygon[] {
  if (body === null) return [];
  const { frontX, backX, radiusMm: r } = body;
  const [middle, half] = [(frontX + backX) / 2, r * 0.36];
  switch (mount.terminalBox) {
    case 'right':
      return [polygon('in', 'terminal-box', rectangle(middle - half, -half, 2 * half, 2 * half))];
    case 'top':
      return [polygon('in', 'terminal-box', rectangle(middle - half, -r - half, 2 * half, half))];
    case 'left':
    case null:
      return [];
  }
}
