import type { Face } from '@/lib/standards/dimension';
import { drawnLength, figuresOnLine, fitsOnLine } from './dimension-line';
import type { Box, DimensionLine, Drawing, Label, Point, Shape } from './drawing';
import { boxOf, frameView } from './frame-view';
import { lengthText } from './length-text';
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
  const figures = figuresOf(candidate, out);
  const upright = heightLine(candidate, out, content, frame.textMm, facts);
  const overhang = overhangLine(candidate, out, content, frame.textMm, facts);
  return {
    caption: 'Face from the drive end',
    viewBox: frame.viewBox,
    textMm: frame.textMm,
    shapes,
    dimensions: overhang === null ? upright : [...upright, overhang.line],
    labels: [
      ...labelsOf(candidate, out, frame.viewBox, frame.textMm, facts),
      ...(overhang === null ? [] : overhang.labels),
    ],
    details: [],
    notDrawn: figures.filter((figure) => figure.isAsked && drawnLength(figure) === null).map((figure) => figure.name),
    sentence: sentenceOf('Face from the drive end', candidate.name, out === null ? null : out.name, figures, facts),
  };
}

function figuresOf(candidate: Mount, out: Mount | null) {
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

function heightLine(
  candidate: Mount,
  out: Mount | null,
  content: Box,
  textMm: number,
  facts: MountFacts,
): DimensionLine[] {
  const height = { in: candidate.heightMm, out: out === null ? undefined : out.heightMm };
  const up = drawnLength(height);
  if (facts.together === 'faces' || candidate.feet === false || up === null) return [];
  return [
    {
      name: 'shaft height',
      direction: 'upright',
      from: { x: content.x + 2, y: 0 },
      to: { x: content.x + 2, y: up },
      at: content.x - textMm * 1.5,
      ...figuresOnLine(height, facts.unit),
    },
  ];
}

/** From the lowest point of the candidate's face to its foot plane; where that is too short, the figures stand beside it. */
function overhangLine(
  candidate: Mount,
  out: Mount | null,
  content: Box,
  textMm: number,
  facts: MountFacts,
): { line: DimensionLine; labels: Label[] } | null {
  const over = overFootPlane(candidate);
  if (facts.together === 'faces' || candidate.feet === false || over === null || candidate.heightMm === null)
    return null;
  const old = out === null || out.face === null ? undefined : overFootPlane(out);
  const texts = figuresOnLine({ in: over, out: old }, facts.unit);
  const [from, to] = [candidate.heightMm - over, candidate.heightMm];
  const at = content.x + content.width + textMm * 1.5;
  const line: DimensionLine = {
    name: 'face over the foot plane',
    direction: 'upright',
    from: { x: 4, y: from },
    to: { x: content.x + content.width - 2, y: to },
    at,
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

/** How far the lowest point of the face stays above the plane of the feet; negative: it hangs below. */
function overFootPlane({ heightMm, face }: Mount): number | null {
  return heightMm === null || face === null || face.outsideMm === null ? null : heightMm - face.outsideMm / 2;
}

/** Spigot and outside at the left, pitch circle and holes at the right; the failed motor's in a row below. */
function labelsOf(
  candidate: Mount,
  out: Mount | null,
  box: { x: number; y: number; width: number; height: number },
  textMm: number,
  facts: MountFacts,
): Label[] {
  const old = out === null ? null : out.face;
  const rows = [
    { face: candidate.face, tone: 'in' as const },
    { face: old, tone: facts.act.includes('face') ? ('act' as const) : ('out' as const) },
  ].flatMap(({ face, tone }) => (face === null ? [] : [{ face, tone }]));
  return rows.flatMap(({ face, tone }, row) => {
    const y = box.y + textMm * (1.1 + row * 1.25);
    const shelf = box.y + textMm * (1.5 + (rows.length - 1) * 1.25);
    const [left, right] = [box.x + textMm * 0.2, box.x + box.width - textMm * 0.2];
    const outside = half(face.outsideMm);
    const pitch = half(face.pitchCircleMm);
    const isLed = row === 0;
    return [
      {
        text: `Ø${lengthText(face.outsideMm, facts.unit)}, spigot ${lengthText(face.spigotMm, facts.unit)}`,
        at: { x: left, y },
        anchor: 'start',
        tone,
        leader: isLed ? leader(outside, -1, { x: left + textMm * 3, y: shelf }) : [],
      },
      {
        text: `circle ${lengthText(face.pitchCircleMm, facts.unit)}, ${holeText(face, facts)}`,
        at: { x: right, y },
        anchor: 'end',
        tone,
        leader: isLed ? leader(pitch, 1, { x: right - textMm * 3, y: shelf }) : [],
      },
    ] satisfies Label[];
  });
}

function leader(radius: number | null, side: 1 | -1, end: Point): Point[] {
  if (radius === null) return [];
  return [{ x: side * radius * Math.SQRT1_2, y: -radius * Math.SQRT1_2 }, end];
}

function holeText({ holes, hole }: Face, facts: MountFacts): string {
  const count = holes === null ? '?' : String(holes);
  if (hole === null) return `${count} × ?`;
  return 'throughMm' in hole ? `${count} × Ø${lengthText(hole.throughMm, facts.unit)}` : `${count} × ${hole.thread}`;
}
