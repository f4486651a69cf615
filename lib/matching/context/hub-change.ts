import type { PumpSet } from '@/lib/plant/set';
import type { FrameDimensions, ShaftKind } from '@/lib/standards/dimension';
import { isSameLength } from '../mount/same-length';
import { CARRIED_SHARE } from '../mount/shaft-shift';
import type { Seat } from './seat';

/** What happens to the hub (or quill) for this candidate's shaft. */
export interface HubChange {
  /**
   * `unknown`: a shaft, a bore, or the key that a sleeve has to leave room for is unknown. `impossible`: it does not
   * fit, and nothing the set allows makes it fit.
   */
  kind:
    | 'none'
    | 'bushing'
    | 'sleeve'
    | 'rebore'
    | 'new-hub'
    | 'new-sheave'
    | 'quill-bushing'
    | 'impossible'
    | 'unknown';
}

export function hubChangeOf(set: PumpSet, fit: FrameDimensions, seat: Seat): HubChange {
  return CHANGES[kindOf(set, fit, seat)];
}

const CHANGES: { readonly [K in HubChange['kind']]: HubChange } = {
  none: { kind: 'none' },
  bushing: { kind: 'bushing' },
  sleeve: { kind: 'sleeve' },
  rebore: { kind: 'rebore' },
  'new-hub': { kind: 'new-hub' },
  'new-sheave': { kind: 'new-sheave' },
  'quill-bushing': { kind: 'quill-bushing' },
  impossible: { kind: 'impossible' },
  unknown: { kind: 'unknown' },
};

/** Pump shafts are interchangeable only with their own type and size. */
export const isPumpShaft = (shaft: ShaftKind): boolean => shaft !== 'plain' && shaft !== 'short' && shaft !== 'special';

function kindOf(set: PumpSet, fit: FrameDimensions, seat: Seat): HubChange['kind'] {
  const have = fit.dimensions.shaftDiameterMm.value;
  const need = seat.shaftDiameter.value;
  const isPump =
    seat.input === 'pump-shaft' || isPumpShaft(fit.shaft) || (seat.shaft !== null && isPumpShaft(seat.shaft));
  if (isPump) return asPumpShaft(fit, seat, have, need);
  if (have === null || need === null) return 'unknown';
  if (isSameLength(have, need)) return 'none';
  if (seat.input === 'quill') {
    const hasBushing = set.coupling.quill.bushing === true && (need - have) / 2 >= LEAST_BUSHING_MM - DUST;
    return hasBushing ? 'quill-bushing' : 'impossible';
  }
  return asHub(set, have, need, fit);
}

function asPumpShaft(fit: FrameDimensions, seat: Seat, have: number | null, need: number | null): HubChange['kind'] {
  // With no plate of the failed motor nobody knows which pump shaft the pump takes.
  if (seat.shaft === null || seat.shaft === 'special' || fit.shaft === 'special') return 'unknown';
  if (familyOf(seat.shaft) !== familyOf(fit.shaft)) return 'impossible';
  if (have !== null && need !== null) return isSameLength(have, need) ? 'none' : 'impossible';
  // The thread of a jet-pump shaft goes with the frame; the bore of a hollow shaft and the cone of a taper do not.
  return fit.shaft === 'J' && fit.frame === seat.frame ? 'none' : 'unknown';
}

const familyOf = (shaft: ShaftKind): ShaftKind => (shaft === 'short' ? 'plain' : shaft);

function asHub({ coupling }: PumpSet, have: number, need: number, { dimensions }: FrameDimensions): HubChange['kind'] {
  const { bushed, reboreToMm, sleeve, lengthMm } = coupling.hub;
  const keyWidthMm = dimensions.keyWidthMm.value;
  const length = dimensions.shaftLengthMm.value;
  // Bushed, sleeved or rebored, the hub keeps its length: a shaft too short for it asks for another hub.
  const isTooLong = lengthMm !== null && length !== null && length < lengthMm * CARRIED_SHARE - DUST;
  const another = anotherOf(coupling);
  if (isTooLong && another !== 'impossible') return another;
  if (have < need) {
    if (bushed === true) return 'bushing';
    if (sleeve === true && keyWidthMm !== null && sleeveWallMm(have, need, keyWidthMm) >= LEAST_WALL_MM)
      return 'sleeve';
    if (sleeve === true && keyWidthMm === null && another === 'impossible') return 'unknown';
  } else {
    if (bushed === true && (reboreToMm === null || have <= reboreToMm)) return 'bushing';
    if (reboreToMm !== null && have <= reboreToMm) return 'rebore';
  }
  return another;
}

/** A plain half is a stock part: it may be replaced unless the set says not. The sheave is a belt's hub on the motor. */
function anotherOf({ type, hub, sheave }: PumpSet['coupling']): 'new-hub' | 'new-sheave' | 'impossible' {
  if (type !== 'belt') return hub.replaceable === false ? 'impossible' : 'new-hub';
  if (hub.replaceable === true || sheave.changeable === true) return 'new-sheave';
  return hub.replaceable === false || sheave.changeable === false ? 'impossible' : 'new-sheave';
}

/**
 * What is left of a sleeve over the key: half of the difference less half of a square key. Flatter IEC keys leave a
 * little more, so this is on the safe side.
 */
const sleeveWallMm = (shaftMm: number, boreMm: number, keyWidthMm: number): number =>
  (boreMm - shaftMm) / 2 - keyWidthMm / 2 + DUST;

/** Common practice, no source. */
const LEAST_WALL_MM = 3;
/** Thinnest wall of a reducer bushing for a quill: none goes between 28 mm and 1-1/8 in. Common practice, no source. */
const LEAST_BUSHING_MM = 1.5;
const DUST = 1e-9;
