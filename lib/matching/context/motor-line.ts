import type { Motor } from '@/lib/plant/motor';
import { isInStep } from './plate-rows';
import type { RatingRow } from './rating-row';

/**
 * A motor's torque near its rating, as a straight line: T(n) = T_fl·φ²·(ns − n)/s.
 * On a drive ns follows the frequency; above `baseHertz` the flux, and with it φ, falls as base over frequency.
 */
export interface MotorLine {
  synchronousRpm: number;
  baseHertz: number;
  /** Rated torque before φ². */
  ratedNm: number;
  /** φ² at and below base frequency. */
  flux2: number;
  /** Speed lost for each N·m of load; 0 for a motor that runs in step with its supply. */
  rpmPerNm: number;
}

/** The line is not trusted above this share of T_fl·φ². */
const TRUSTED_UP_TO = 1.25;

/** Null when plate and supply do not tell it. */
export function motorLineOf(candidate: Motor, row: RatingRow): MotorLine | null {
  const { synchronousRpm, hertz, phi, fullLoadTorqueNm } = row;
  if (synchronousRpm === null || hertz === null || phi === null || fullLoadTorqueNm === null) return null;
  const slipRpm = isInStep(candidate) ? 0 : row.slipRpm;
  if (slipRpm === null) return null;
  const flux2 = phi * phi;
  return {
    synchronousRpm,
    baseHertz: hertz,
    ratedNm: fullLoadTorqueNm,
    flux2,
    rpmPerNm: slipRpm / (fullLoadTorqueNm * flux2),
  };
}

/** `hertz`: the drive's frequency, null on the mains. */
export const speedPu = (line: MotorLine, hertz: number | null): number => (hertz === null ? 1 : hertz / line.baseHertz);

/** Load torque at `rpm` when it is `torqueNm` at `atRpm`. */
export const torqueAt = (torqueNm: number, rpm: number, atRpm: number, exponent: 0 | 2): number =>
  exponent === 0 ? torqueNm : torqueNm * (rpm / atRpm) ** 2;

/** Where motor and load torque meet. */
export function rpmUnderLoad(
  line: MotorLine,
  hertz: number | null,
  torqueNm: number,
  atRpm: number,
  exponent: 0 | 2,
): number {
  const pu = speedPu(line, hertz);
  const ns = line.synchronousRpm * pu;
  const rpmPerNm = line.rpmPerNm * (pu > 1 ? pu * pu : 1);
  if (exponent === 0) return ns - rpmPerNm * torqueNm;
  // (ns − n)/r = T·(n/n_at)²: the positive root, written so that r = 0 gives ns.
  const steepness = (4 * torqueNm * rpmPerNm * ns) / (atRpm * atRpm);
  return (2 * ns) / (1 + Math.sqrt(1 + steepness));
}

/** Where the motor carries torque × speed = `nmRpm`, whatever the ratio; null when it cannot. Mains only. */
export function rpmAtPower(line: MotorLine, nmRpm: number): number | null {
  const { synchronousRpm: ns, rpmPerNm, ratedNm, flux2 } = line;
  const root = ns * ns - 4 * rpmPerNm * nmRpm;
  if (root < 0) return null;
  const rpm = (ns + Math.sqrt(root)) / 2;
  return nmRpm / rpm <= TRUSTED_UP_TO * ratedNm * flux2 ? rpm : null;
}

/** The drive's frequency at which the motor makes `rpm` under `torqueNm`; null when no frequency does. */
export function hertzFor(line: MotorLine, rpm: number, torqueNm: number): number | null {
  const { synchronousRpm: ns, rpmPerNm, baseHertz } = line;
  const drop = rpmPerNm * torqueNm;
  const below = (rpm + drop) / ns;
  if (below <= 1) return below * baseHertz;
  // Above base the slip grows with the square of the frequency: ns·x = n + drop·x².
  const root = ns * ns - 4 * drop * rpm;
  if (root < 0) return null;
  return ((2 * rpm) / (ns + Math.sqrt(root))) * baseHertz;
}

export function isTrusted(line: MotorLine, hertz: number | null, torqueNm: number): boolean {
  const pu = speedPu(line, hertz);
  const weakening = pu > 1 ? 1 / (pu * pu) : 1;
  return torqueNm <= TRUSTED_UP_TO * line.ratedNm * line.flux2 * weakening;
}
