import type { Detail } from './drawing';
import { frameDetail, type ViewFrame } from './frame-view';
import { farHole } from './hole-pattern';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { leaderFrom, type NextLetter } from './side-details';

/** One hole enlarged, where the two patterns differ by less than can be seen. */
export function holeDetail(
  candidate: Mount,
  out: Mount | null,
  slide: number,
  { boltMm, unit, together }: MountFacts,
  { textMm, unseenMm }: ViewFrame,
  nextLetter: NextLetter,
): Detail[] {
  const spot = farHole(candidate, slide);
  const old = out === null ? null : farHole(out, 0);
  const hole = candidate.footHoleMm ?? (out === null ? null : out.footHoleMm);
  if (spot === null || old === null || hole === null) return [];
  const off = Math.hypot(spot.x - old.x, spot.y - old.y);
  if (off < 0.005 || off > unseenMm) return [];
  const letter = nextLetter();
  const text = (mm: number | null) => (mm === null ? '?' : `Ø${lengthText(mm, unit)}`);
  const figures = `hole ${text(candidate.footHoleMm)}, bolt ${text(boltMm)}`;
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
      figures: `${figures}, ${lengthText(off, unit)} off`,
      sentence: `Detail ${letter}: with the ${
        together === 'holes' ? 'drive-end holes' : 'shaft ends'
      } together the far holes lie ${lengthText(off, unit)} ${unit} apart; ${figures}.`,
    },
  ];
}
