import type { PumpSet } from '@/lib/plant/set';
import type { FrameDimensions } from '@/lib/standards/dimension';
import { holeToShaftEndMm, type Seat } from '../context/seat';

/**
 * Where the shaft end comes to stand, and what takes up the difference. `overhangs`: the hub slides outward and keeps
 * 0.8 of its length on the shaft. `slides-back`: the hub slides back on a shaft that leaves room. `gap`: the coupling
 * gap takes it up. `too-far`, `too-near`: none of these. `meets`: the hub would slide back, but the shaft end then reaches as
 * far as the gap is wide, and how far the pump's shaft stands in its own hub is not told. `no-hub`, `no-gap`: that length
 * is not told and decides.
 */
export type ShaftShift =
  | 'same'
  | 'overhangs'
  | 'slides-back'
  | 'gap'
  | 'too-far'
  | 'too-near'
  | 'meets'
  | 'no-hub'
  | 'no-gap'
  | 'unknown'
  | 'not-asked';

/** What only a transition base, a spacer, a moved base or a reading puts right. */
export const isNotInPlace = (shift: ShaftShift): boolean =>
  shift === 'too-far' || shift === 'too-near' || shift === 'meets' || shift === 'no-hub' || shift === 'no-gap';

export function shaftShift(set: PumpSet, fit: FrameDimensions, seat: Seat): ShaftShift {
  const have = holeToShaftEndMm(fit);
  const need = seat.holeToShaftEnd.value;
  if (have === null || need === null) return 'unknown';
  const nearerMm = have - need;
  if (Math.abs(nearerMm) <= PLAY_MM) return 'same';
  // A sheave is set along the shaft until the belts run true.
  if (set.coupling.type === 'belt') return 'slides-back';
  // Held by its face as well, with no hub to slide: the shaft stays, and the foot holes are off by the difference.
  if (seat.needsFace && seat.input !== 'hub') return nearerMm < 0 ? 'too-far' : 'too-near';
  return nearerMm < 0 ? further(set, -nearerMm, seat.shaftLength.value) : nearer(set, nearerMm, fit);
}

/** What the play of the foot bolts takes up along the shaft. Common practice, no source. */
const PLAY_MM = 1;
/** Share of a hub that must sit on the shaft. Common practice, no source. */
export const CARRIED_SHARE = 0.8;
/** A shift this small no coupling feels, whatever its gap. Common practice, no source. */
const SMALL_SHIFT_MM = 3;
const DUST = 1e-9;

function further({ coupling }: PumpSet, mm: number, oldShaftMm: number | null): ShaftShift {
  const { hub, gapMm, gapMaxMm } = coupling;
  const opensMm = gapMm === null || gapMaxMm === null ? null : gapMaxMm - gapMm;
  if (hub.lengthMm === null && opensMm !== null && mm <= opensMm + DUST) return 'gap';
  // A hub of unknown length was carried by the old shaft: it is no longer than that allows, whatever a tape would say.
  const longestMm = hub.lengthMm ?? (oldShaftMm === null ? null : oldShaftMm / CARRIED_SHARE);
  if (longestMm === null) return 'no-hub';
  const overhangMm = longestMm * (1 - CARRIED_SHARE);
  const reachMm = opensMm === null ? overhangMm : overhangMm + opensMm;
  if (mm > reachMm + DUST) return 'too-far';
  if (hub.lengthMm === null) return 'no-hub';
  return mm <= overhangMm + DUST ? 'overhangs' : 'gap';
}

function nearer({ coupling }: PumpSet, mm: number, { dimensions }: FrameDimensions): ShaftShift {
  const { hub, gapMm, gapMinMm } = coupling;
  const length = dimensions.shaftLengthMm.value;
  const hasRoom = hub.lengthMm !== null && length !== null && length - mm >= hub.lengthMm - DUST;
  // The shaft end then stands in the gap: it must not reach the pump's.
  if (hasRoom && (gapMm === null || mm < gapMm)) return 'slides-back';
  const isNear = hasRoom ? 'meets' : 'too-near';
  if (gapMm !== null && gapMinMm !== null) return gapMm - mm >= gapMinMm - DUST ? 'gap' : isNear;
  if (gapMm !== null && mm >= gapMm) return isNear;
  return mm <= SMALL_SHIFT_MM + DUST ? 'gap' : 'no-gap';
}
