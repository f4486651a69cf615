import type { Dimension, FrameDimensions } from '@/lib/standards/dimension';
import type { Seat } from '../context/seat';

/**
 * `either`: the base may have one of two patterns and this motor fits only one of them. `unknown`: a spacing is
 * unknown. `no-bolt`, `no-hole`: the spacings are known, but not the bolt or the candidate's hole.
 */
export type HoleMisfit = 'fits' | 'misfit' | 'either' | 'unknown' | 'no-bolt' | 'no-hole' | 'not-asked';

/** Do the candidate's foot holes take the bolts as they stand? Any recorded pattern of the motor counts. */
export function holeMisfit(fit: FrameDimensions, seat: Seat): HoleMisfit {
  const { holesAcrossMm: across, holesAlongMm: along, footHoleMm: hole } = fit.dimensions;
  const { holesAcross, holesAlong, bolt } = seat;
  if (across.value === null || along.value === null || holesAcross.value === null || holesAlong.value === null)
    return 'unknown';
  const playMm = hole.value === null || bolt.value === null ? MOST_PLAY_MM : (hole.value - bolt.value) / 2;
  if (playMm < 0) return 'misfit';
  const patterns = 1 + holesAlong.alternatives.length;
  const met = patternsMet(across, along, holesAcross, holesAlong, playMm);
  if (met > 0 && hole.value === null) return 'no-hole';
  if (met > 0 && bolt.value === null) return 'no-bolt';
  return met === patterns ? 'fits' : met === 0 ? 'misfit' : 'either';
}

/** How many of the base's patterns the motor meets with one of its own. */
function patternsMet(across: Dimension, along: Dimension, baseAcross: Dimension, baseAlong: Dimension, playMm: number) {
  const acrossMm = nearest(across, baseAcross.value);
  let met = isMet(acrossMm, nearest(along, baseAlong.value), playMm) ? 1 : 0;
  for (const other of baseAlong.alternatives) if (isMet(acrossMm, nearest(along, other), playMm)) met += 1;
  return met;
}

/**
 * The motor is slid until the misfit is shared by all four feet: each hole is off by half of the difference across and
 * half of it along. A hole lets its bolt stand off centre by half of the play, whichever way.
 */
const isMet = (acrossMm: number, alongMm: number, playMm: number) =>
  Math.sqrt(acrossMm * acrossMm + alongMm * alongMm) / 2 <= playMm + PRINTED_MM;

/** No foot hole lets its bolt stand further off, whatever their sizes. Common practice, no source. */
const MOST_PLAY_MM = 5;

/** Hole sizes are printed to 0.01 in and spacings to a whole mm: less than this is print, not misfit. */
const PRINTED_MM = 0.1;

/** The least difference between the base's spacing and any spacing of the motor; Infinity when the base's is unknown. */
export function nearest({ value, alternatives }: Dimension, baseMm: number | null): number {
  if (baseMm === null) return Number.POSITIVE_INFINITY;
  let least = value === null ? Number.POSITIVE_INFINITY : Math.abs(value - baseMm);
  for (const other of alternatives) least = Math.min(least, Math.abs(other - baseMm));
  return least;
}
