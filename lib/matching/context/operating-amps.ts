import type { RatingRow } from './rating-row';

/** Below this load a current scaled by load alone says little: DOE load fact sheet by two texts. */
const LINEAR_FROM = 0.5;
/** Of the reactive current at full load, the share that magnetises: fitted to two public data sheets (one text each). */
const MAGNETISING = 0.75;

/**
 * Line current at `motorKw`, estimated from the plate. With a plated power factor the current has a working part, which
 * follows power over volts, and a reactive part, three quarters of which magnetise and follow the flux while the rest
 * leaks and follows the square of the load: so the part-load currents of two public data sheets, 3 hp and 22 kW, come out
 * within 3 %. Without one, current = plate amps × load × plate volts / volts, the published line-current method, and only
 * above half load. Null when it cannot be told.
 */
export function operatingAmps(
  { plate, volts, hertz: baseHertz, phi, fluxRatio }: RatingRow,
  motorKw: number,
  hertz: number | null,
): number | null {
  if (plate === null || plate.amps === null || plate.kw === null || plate.hertz === null) return null;
  if (volts === null || phi === null || baseHertz === null || fluxRatio === null) return null;
  const pu = hertz === null ? 1 : hertz / baseHertz;
  const load = motorKw / plate.kw;
  // φ = (V/f)/(Vn/fn), so Vn/V, of a range its nearest end, is fn/f over φ.
  const voltsRatio = plate.hertz / (baseHertz * fluxRatio);
  const working = (load * voltsRatio) / Math.min(1, pu);
  if (plate.pf === null) return working < LINEAR_FROM ? null : plate.amps * working;
  const reactive = Math.sqrt(1 - plate.pf * plate.pf);
  const magnetising = (MAGNETISING * phi) / Math.max(1, pu);
  return plate.amps * Math.hypot(plate.pf * working, reactive * (magnetising + (1 - MAGNETISING) * working * working));
}
