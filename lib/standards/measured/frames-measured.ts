import { type FrameOption, frameOptions } from './frame-options';
import { type Measurable, type Measured, type Misfit, misfitsOf, type Tool } from './misfit';

/** What is known of its face: that it has none, or how its holes are. */
export type FaceSeen = 'none' | 'tapped' | 'through';

export interface FrameFound {
  option: FrameOption;
  misfits: Misfit[];
  /** The farthest that one reading lies beyond what it may, mm; 0: every reading agrees. */
  worst: number;
  /** Measured, and not fixed by the standard for this frame: it says nothing for it. */
  untold: Measurable[];
}

export interface FramesMeasured {
  /** Every reading agrees, as far as the standard fixes what was measured. */
  fits: FrameFound[];
  /** The nearest of those that do not, the nearest first. */
  near: FrameFound[];
}

/** A frame that is farther off than this is not what stands there. */
const NEAR_MM = 12;
const MOST_NEAR = 8;

/**
 * The frames, NEMA and IEC, that a motor can be by what was measured at it. What was not measured rules nothing out; a
 * face that was seen does.
 */
export function framesMeasured(measured: Measured, face: FaceSeen | null, tool: Tool): FramesMeasured {
  const found = frameOptions()
    .filter((option) => suits(option, face, measured))
    .map((option): FrameFound => {
      const misfits = misfitsOf(option, measured, tool);
      return {
        ...{ option, misfits },
        worst: Math.max(0, ...misfits.map(({ beyond }) => beyond ?? 0)),
        untold: misfits.flatMap(({ name, need }) => (need === null ? [name] : [])),
      };
    })
    .filter(({ misfits }) => misfits.some(({ need }) => need !== null))
    .sort(nearerFirst);
  return {
    fits: found.filter(({ worst }) => worst === 0),
    near: found.filter(({ worst }) => worst > 0 && worst <= NEAR_MM).slice(0, MOST_NEAR),
  };
}

/** One without a face is not asked for a face; one whose face nobody looked at may have any, and stands as its foot motor. */
function suits({ fit }: FrameOption, face: FaceSeen | null, measured: Measured): boolean {
  const isFaceMeasured = FACE.some((name) => measured[name] !== undefined);
  if (face === 'none') return fit.face === null;
  if (fit.face === null) return face === null && !isFaceMeasured;
  if (face === null) return isFaceMeasured;
  const isThrough = fit.face.kind === 'D' || fit.face.kind === 'FF';
  return isThrough === (face === 'through');
}

const FACE: readonly Measurable[] = ['pitchCircleMm', 'spigotMm', 'faceDiameterMm'];

/** By the worst reading, then by how much of what was measured the standard says nothing, then by the sum of all. */
function nearerFirst(a: FrameFound, b: FrameFound): number {
  return a.worst - b.worst || a.untold.length - b.untold.length || sumOf(a) - sumOf(b);
}

const sumOf = ({ misfits }: FrameFound): number =>
  misfits.reduce((sum, { difference }) => sum + Math.abs(difference ?? 0), 0);
