import { type FrameOption, frameOptions } from './frame-options';
import { figureOf, MEASURABLE, type Measurable, type Measured, type Misfit, misfitsOf, type Tool } from './misfit';
import { type Seen, suits } from './seen';

export interface FrameFound {
  option: FrameOption;
  misfits: Misfit[];
  /** The farthest that one reading lies beyond what it may, mm; 0: every reading agrees. */
  worst: number;
  /** Measured, and not fixed by the standard for this frame: it says nothing for it. */
  untold: Measurable[];
  /** Fixed by the standard for this frame, and not measured: where it may still turn out to be another. */
  unmeasured: Measurable[];
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
 * The frames, NEMA and IEC, that a motor can be by what was measured at it, by their worst misfit. What was not measured
 * rules nothing out and is listed; a face that was seen does.
 */
export function framesMeasured(measured: Measured, seen: Seen, tool: Tool): FramesMeasured {
  const found = suits(frameOptions(), seen, measured)
    .map((option): FrameFound => {
      const misfits = misfitsOf(option, measured, tool);
      return {
        ...{ option, misfits },
        worst: Math.max(0, ...misfits.map(({ beyond }) => beyond ?? 0)),
        untold: misfits.flatMap(({ name, need }) => (need === null ? [name] : [])),
        unmeasured: MEASURABLE.filter((name) => measured[name] === undefined && figureOf(option, name) !== null),
      };
    })
    .filter(({ misfits }) => misfits.some(({ need }) => need !== null))
    .sort(nearerFirst);
  return {
    fits: found.filter(({ worst }) => worst === 0),
    near: found.filter(({ worst }) => worst > 0 && worst <= NEAR_MM).slice(0, MOST_NEAR),
  };
}

/** By how far the worst reading lies beyond what it may; then those of which the standard tells more, and the smaller misfit. */
function nearerFirst(a: FrameFound, b: FrameFound): number {
  return (
    a.worst - b.worst ||
    a.untold.length - b.untold.length ||
    greatest(a) - greatest(b) ||
    a.unmeasured.length - b.unmeasured.length
  );
}

const greatest = ({ misfits }: FrameFound): number =>
  Math.max(...misfits.map(({ difference }) => Math.abs(difference ?? 0)));
