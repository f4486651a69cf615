import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import type { PumpSet } from '@/lib/plant/set';

/**
 * The candidate's rating at this supply. On a drive the supply is the drive's output (three-phase, outputVolts, baseHertz).
 * Powers in kW, speeds in rpm, torque in N·m. Null: not known.
 */
export interface RatingRow {
  /** The plate row it rests on; null when the plate has none that could serve. */
  plate: Rating | null;
  /** plated: a row at the supply's hertz. re-rated: moved from another hertz. none: no row at all, or hertz unknown. */
  kind: 'plated' | 're-rated' | 'none';
  /** Volts and hertz the motor would see. */
  volts: number | null;
  hertz: number | null;
  /** Flux ratio (V/f) over the plate's (Vn/fn); 1 on a drive up to its base frequency; null when any part is unknown. */
  phi: number | null;
  /** Greatest continuous power here before surroundings derate it. */
  kw: number | null;
  /** Synchronous speed at `hertz`. */
  synchronousRpm: number | null;
  /** Rated slip in rpm, from the plate's own row; null when the plate speed is unknown or synchronous or above. */
  slipRpm: number | null;
  /** Full-load speed here: synchronousRpm − slipRpm. */
  rpm: number | null;
  /** T_fl: plate power at plate speed, before φ². */
  fullLoadTorqueNm: number | null;
  amps: number | null;
  /** 1 when unprinted, re-rated or on a drive. */
  serviceFactor: number;
}

export function ratingRowOf(_set: PumpSet, _candidate: Motor): RatingRow {
  throw new Error('not yet written');
}
