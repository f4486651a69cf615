import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { FrameDimensions } from '@/lib/standards/dimension';
import { type HoleMisfit, holeMisfit } from '../mount/hole-misfit';
import { isNotInPlace, type ShaftShift, shaftShift } from '../mount/shaft-shift';
import type { Seat } from './seat';

/**
 * What happens to the base under this candidate, decided once for height, foot holes and shaft position: a transition
 * base cures all three. Each is `not-asked` for a motor held by its face alone.
 */
export interface BaseChange {
  /** What must lie under each foot in the end, mm; negative: the candidate's shaft is too high. Null unknown. */
  stackMm: number | null;
  /** What must be added to the shims present, mm; null unknown. */
  addMm: number | null;
  height: 'same' | 'shims' | 'above-shims' | 'too-high' | 'unknown' | 'not-asked';
  holes: HoleMisfit;
  shift: ShaftShift;
  /** True where a transition base is what cures what does not fit. */
  isTransition: boolean;
}

export function baseChangeOf(set: PumpSet, fit: FrameDimensions, seat: Seat, settings: SiteSettings): BaseChange {
  if (!seat.needsFeet) return NOT_ASKED;
  const have = fit.dimensions.shaftHeightMm.value;
  const need = seat.shaftHeight.value;
  const addMm = have === null || need === null ? null : need - have;
  const { shimsPresentMm } = set.base;
  // With the shims present unknown, what is added is the least that will lie there.
  const stackMm =
    addMm === null ? null : shimsPresentMm === null ? (addMm >= 0 ? addMm : null) : shimsPresentMm + addMm;
  const height = heightOf(addMm, stackMm, set.base.shimLimitMm ?? settings.shimLimitMm);
  const holes = holeMisfit(fit, seat);
  const shift = shaftShift(set, fit, seat);
  return { stackMm, addMm, height, holes, shift, isTransition: needsTransition(set, stackMm, height, holes, shift) };
}

const NOT_ASKED: BaseChange = {
  stackMm: null,
  addMm: null,
  height: 'not-asked',
  holes: 'not-asked',
  shift: 'not-asked',
  isTransition: false,
};

/** The thinnest shim in a usual set: what is less is the aligner's. Common practice, no source. */
const THINNEST_SHIM_MM = 0.05;

function heightOf(addMm: number | null, stackMm: number | null, limitMm: number): BaseChange['height'] {
  if (addMm === null) return 'unknown';
  if (Math.abs(addMm) < THINNEST_SHIM_MM) return 'same';
  if (stackMm === null) return 'unknown';
  if (stackMm < -THINNEST_SHIM_MM) return 'too-high';
  return stackMm <= limitMm + DUST ? 'shims' : 'above-shims';
}

/** A plate thinner than this cannot hold a thread for the motor's bolts. Common practice, no source. */
export const LEAST_PLATE_MM = 10;
const DUST = 1e-9;

function needsTransition(
  { base }: PumpSet,
  stackMm: number | null,
  height: BaseChange['height'],
  holes: HoleMisfit,
  shift: ShaftShift,
): boolean {
  if (base.transitionBase !== true || stackMm === null || stackMm < LEAST_PLATE_MM - DUST) return false;
  // Height alone is had for less with a ground block; slotting alone for less than a plate.
  return isNotInPlace(shift) || (holes === 'misfit' && (base.slotting !== true || height === 'above-shims'));
}
