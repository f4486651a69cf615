import type { Box, Label, Point } from './drawing';
import { holeText } from './face-holes';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';

/** Spigot and outside at the left, pitch circle and holes at the right; the failed motor's in a row below. */
export function faceLabels(candidate: Mount, out: Mount | null, box: Box, textMm: number, facts: MountFacts): Label[] {
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
        text: `${face === old ? 'was ' : ''}Ø${lengthText(face.outsideMm, facts.unit)}, spigot ${lengthText(face.spigotMm, facts.unit)}`,
        at: { x: left, y },
        anchor: 'start',
        tone,
        leader: isLed ? leader(outside, -1, { x: left + textMm * 3, y: shelf }) : [],
      },
      {
        text: `circle ${lengthText(face.pitchCircleMm, facts.unit)}, ${holeText(face, facts.unit)}`,
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

const half = (diameter: number | null) => (diameter === null ? null : diameter / 2);
