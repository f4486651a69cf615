import type { Face, FaceKind } from '@/lib/standards/dimension';
import { figure } from '@/lib/units/figure';

/**
 * Faces that may bolt in place of each other if their figures agree. C, CH and the pump faces JM and JP are one kind of
 * tapped face; the figures tell 182C, 182TC and 182TCH apart. FF and FT of one number share all figures but the holes.
 */
export const familyOf = (kind: FaceKind): 'C' | 'D' | 'P' | 'FF' | 'FT' => {
  switch (kind) {
    case 'C':
    case 'CH':
    case 'JM':
    case 'JP':
      return 'C';
    default:
      return kind;
  }
};

type FaceMisfit = 'same' | 'pitch-circle' | 'spigot' | 'holes' | 'larger' | 'smaller' | 'unknown';

/** What first keeps a face of the same family from bolting on. */
export function faceMisfit(have: Face, need: Face): FaceMisfit {
  if (isOff(have.pitchCircleMm, need.pitchCircleMm, PITCH_MM)) return 'pitch-circle';
  if (isOff(have.spigotMm, need.spigotMm, SPIGOT_MM)) return 'spigot';
  if (have.holes !== null && need.holes !== null && have.holes !== need.holes) return 'holes';
  if (isOtherThread(have.hole, need.hole)) return 'holes';
  if (have.pitchCircleMm === null || need.pitchCircleMm === null || have.spigotMm === null || need.spigotMm === null)
    return have.name === need.name && isFixed(have) && isFixed(need) ? 'same' : 'unknown';
  if (have.outsideMm === null || need.outsideMm === null || !isOff(have.outsideMm, need.outsideMm, OUTSIDE_MM))
    return 'same';
  return have.outsideMm > need.outsideMm ? 'larger' : 'smaller';
}

/** A bolt circle measured with a rule. */
const PITCH_MM = 0.5;
/** A spigot measured with a caliper. */
const SPIGOT_MM = 0.1;
const OUTSIDE_MM = 1;

const isOff = (have: number | null, need: number | null, mm: number) =>
  have !== null && need !== null && Math.abs(have - need) > mm;

/** A frame of the same name has the same face, though no table here prints it; an optional flange need not. */
const isFixed = ({ optional }: Face) => !optional;

const isOtherThread = (have: Face['hole'], need: Face['hole']) =>
  have !== null && need !== null && 'thread' in have && 'thread' in need && have.thread !== need.thread;

/** A face in words: "FF165 (165 mm bolt circle, 130 mm spigot, 4 through holes of 12 mm)". */
export function figuresOf({ name, kind, pitchCircleMm, spigotMm, holes, hole }: Face): string {
  const circle = pitchCircleMm === null ? 'bolt circle unknown' : `${figure(pitchCircleMm)} mm bolt circle`;
  const spigot = spigotMm === null ? 'spigot unknown' : `${figure(spigotMm)} mm spigot`;
  return `${name} (${circle}, ${spigot}, ${holes === null ? '' : `${holes} `}${holesOf(hole, kind)})`;
}

function holesOf(hole: Face['hole'], kind: FaceKind): string {
  if (hole === null) return kind === 'FF' || kind === 'D' || kind === 'P' ? 'through holes' : 'tapped holes';
  return 'thread' in hole ? `holes tapped ${hole.thread}` : `through holes of ${figure(hole.throughMm)} mm`;
}
