import type { RatingRow } from './rating-row';

/** Below this load a current scaled by load alone says little: DOE load fact sheet by two texts. */
const LINEAR_FROM = 0.5;

/**
 * Line current at `motorKw`, estimated from the plate. With a plated power factor the current is made of a working part
 * that follows power over volts and a magnetising part that follows the flux (the part-load power factors of a public
 * 3 hp data sheet come out within 0.02, a 22 kW one reads up to 10 % high). Without one, current = plate amps × load ×
 * plate volts / volts, the published line-current method, and only above half load. Null when it cannot be told.
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
  const magnetising = Math.sqrt(1 - plate.pf * plate.pf) * (phi / Math.max(1, pu));
  return plate.amps * Math.hypot(plate.pf * working, magnetising);
}
