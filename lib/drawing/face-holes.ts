import type { Face } from '@/lib/standards/dimension';
import type { Point } from './drawing';
import { lengthText } from './length-text';
import type { MountFacts } from './mount-facts';

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

/** How many holes of which size; a question mark for what is not known. */
export function holeText({ holes, hole }: Face, unit: MountFacts['unit']): string {
  const count = holes === null ? '?' : String(holes);
  if (hole === null) return `${count} × ?`;
  return 'throughMm' in hole ? `${count} × Ø${lengthText(hole.throughMm, unit)}` : `${count} × ${hole.thread}`;
}

/** Nominal diameter of a thread written "M10", "M10 x 1.5", "3/8-16" or "1/2-13"; null when written otherwise. */
function threadMm(thread: string): number | null {
  const metric = /^M(\d+(?:\.\d+)?)/.exec(thread);
  if (metric?.[1] !== undefined) return Number(metric[1]);
  const inch = /^(\d{1,2})\/(\d{1,2})-/.exec(thread);
  if (inch?.[1] === undefined || inch[2] === undefined) return null;
  return (Number(inch[1]) / Number(inch[2])) * 25.4;
}
