import type { Motor } from '@/lib/plant/motor';
import { dimensionsOf } from '@/lib/standards/dimensions-of';
import { frameName } from '@/lib/standards/frame-name';
import { figure } from '@/lib/units/figure';

export interface HardToReplace {
  says: string;
  cite: string;
}

const known = new WeakMap<Motor, HardToReplace | null>();

/** Why a new standard motor is not the like of this one: an old frame series, a shaft or mounting of its own; null: it is. */
export function hardToReplace(motor: Motor): HardToReplace | null {
  const before = known.get(motor);
  if (before !== undefined) return before;
  const told = ofFrame(motor) ?? ofShaft(motor);
  known.set(motor, told);
  return told;
}

const SUFFIX = 'NEMA MG 1 4.2.2, suffix letters (read in two texts)';

function ofFrame({ frame }: Motor): HardToReplace | null {
  const read = frame === null ? null : frameName(frame);
  if (read === null || !read.ok || read.value.name.system !== 'NEMA') return null;
  const { name } = read.value;
  if (name.generation === 'U' || name.generation === 'original')
    return {
      says: `Frame ${name.frame} is of a series that gave way to the T frames: a motor made today stands on other feet and has another shaft.`,
      cite: 'common practice, no source: NEMA frames before the T series, which came in 1964 (from memory)',
    };
  if (name.hasSpecialShaft)
    return { says: `Frame ${name.frame} has a shaft that is not the standard’s.`, cite: SUFFIX };
  if (name.hasSpecialMounting)
    return { says: `Frame ${name.frame} has feet or a face that are not the standard’s.`, cite: SUFFIX };
  return null;
}

/** mm between a shaft measured with a caliper and the standard’s of its frame: more is another shaft. Common practice, no source. */
const CALIPER_MM = 0.2;

function ofShaft({ frame, mounting, poles, measured }: Motor): HardToReplace | null {
  const have = measured.shaftDiameterMm;
  const { value: standard, alternatives } = dimensionsOf(frame, { mounting, poles }).dimensions.shaftDiameterMm;
  if (have === null || standard === null) return null;
  if ([standard, ...alternatives].some((one) => Math.abs(one - have) <= CALIPER_MM)) return null;
  return {
    says: `Its shaft was measured as ${figure(have, 2)} mm, where frame ${frame} has ${figure(standard, 2)} mm.`,
    cite: 'NEMA MG 1 4.4.1, IEC 60072-1: shaft of the frame, against what was measured',
  };
}
