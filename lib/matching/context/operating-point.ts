import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { kwOfTorque } from '@/lib/units/torque';
import { type DrivenLoad, drivenLoadOf, failedRowOf } from './driven-load';
import { hertzFor, isTrusted, type MotorLine, motorLineOf, rpmAtPower, rpmUnderLoad, torqueAt } from './motor-line';
import { operatingAmps } from './operating-amps';
import type { RatingRow } from './rating-row';

/** Where the motor runs: speeds, and what it carries there. Any figure that cannot be told is null. */
export interface Running {
  motorRpm: number | null;
  pumpRpm: number | null;
  pumpKw: number | null;
  motorKw: number | null;
  /** motorKw over the row's kw. */
  loadPct: number | null;
  /** Load torque at the motor over its rated torque. */
  torquePct: number | null;
  amps: number | null;
}

/**
 * Where the candidate would run with sheaves and drive settings as they are. `why` says why the point was not solved.
 * `restored` is where it would run once the speed is put right.
 */
export interface OperatingPoint extends Running {
  flowChangePct: number | null;
  why: string | null;
  /** True where all is known and still no speed can be told: the load is beyond what the motor is trusted to carry. */
  isBeyond: boolean;
  /** On a drive: the frequency the set runs at. Null on the mains. */
  hertz: number | null;
  /** What the figures take from the failed motor or for granted; null when nothing. */
  assumes: string | null;
  restored: Restored | null;
}

/** After a new sheave, or a new frequency in the drive, has brought the pump back to its speed. */
export interface Restored extends Running {
  by: 'sheave' | 'drive';
  /** The frequency to set; null for a sheave. */
  hertz: number | null;
  /** The new sheave's pitch diameter over the old one's; 1 on a drive. */
  sheaveScale: number;
}

/**
 * A set that states no tolerance is judged within this, and the finding says so: common practice, no source. It lets pass
 * every motor of the same poles (full-load slips of 0.5 to 5 %) and stops another number of poles or another frequency.
 */
export const LIKE_FOR_LIKE_FLOW_PCT = 5;

export function operatingPointOf(set: PumpSet, candidate: Motor, row: RatingRow): OperatingPoint {
  const load = drivenLoadOf(set);
  const isDriveFed = set.supply.start === 'drive';
  const line = motorLineOf(candidate, row);
  const { exponent, motorRpm: askedRpm } = load;
  if (line === null || exponent === null || askedRpm === null || load.losslessNm === null)
    return unsolved(whyNot(row, load));

  // A gear's losses move the speed by a few per cent of the slip: without them the speed stands, the power does not.
  const torqueNm = load.torqueNm ?? load.losslessNm;
  const hertz = isDriveFed ? hertzSet(set, line, askedRpm, torqueNm) : null;
  if (isDriveFed && hertz === null) return unsolved('No frequency gives the speed asked with this load.', true);
  const rpm = rpmUnderLoad(line, hertz, torqueNm, askedRpm, exponent);
  // A new sheave or frequency may still bring the load within what it can carry.
  if (!isTrusted(line, hertz, torqueAt(torqueNm, rpm, askedRpm, exponent)))
    return unsolved(OVERLOADED, true, restoredOf(set, row, line, load, torqueNm));
  if (rpm <= 0) return unsolved(STALLED, true, restoredOf(set, row, line, load, torqueNm));

  const change = rpm / askedRpm - 1;
  const lossy = load.torqueNm === null ? null : torqueAt(load.torqueNm, rpm, askedRpm, exponent);
  const pumpRpm = load.pumpRpm === null ? null : load.pumpRpm * (1 + change);
  const pumpKw = load.shaftKw === null ? null : load.shaftKw * (1 + change) ** (exponent + 1);
  const motorKw = lossy === null ? null : kwOfTorque(lossy, rpm);
  const isOut = Math.abs(change) * 100 > flowTolerancePct(set) || isTooFast(set, pumpRpm);
  return {
    motorRpm: rpm,
    pumpRpm,
    pumpKw,
    motorKw,
    loadPct: shareOf(motorKw, row.kw),
    torquePct: shareOf(lossy, line.ratedNm),
    amps: motorKw === null ? null : operatingAmps(row, motorKw, hertz),
    flowChangePct: change * 100,
    why: null,
    isBeyond: false,
    hertz,
    assumes: load.assumes,
    restored: isOut ? restoredOf(set, row, line, load, torqueNm) : null,
  };
}

/** Beyond the straight part of the torque curve there is no figure. */
const OVERLOADED = 'The load is over 1.25 times the rated torque: what speed it would run at cannot be told.';
const STALLED = 'At the highest frequency of the drive it would not turn under this load.';

/** How far the flow may change, to the letter: a plate's own tolerance widens neither it nor the pump's maximum speed. */
export const flowTolerancePct = ({ load }: PumpSet): number => (load.flowTolerancePct ?? LIKE_FOR_LIKE_FLOW_PCT) + DUST;

/** Clears binary dust, in per cent: a change of exactly the tolerance is inside it. */
const DUST = 1e-9;

const failedPoints = new WeakMap<PumpSet, OperatingPoint>();

/** Where the failed motor ran; null when there is no plate. */
export function failedPointOf(set: PumpSet): OperatingPoint | null {
  const row = failedRowOf(set);
  if (set.failed === null || row === null) return null;
  const known = failedPoints.get(set);
  if (known !== undefined) return known;
  const point = operatingPointOf(set, set.failed, row);
  failedPoints.set(set, point);
  return point;
}

const isTooFast = ({ load }: PumpSet, pumpRpm: number | null): boolean =>
  pumpRpm !== null && load.maxPumpRpm !== null && pumpRpm > load.maxPumpRpm * (1 + DUST / 100);

/** The frequency the failed motor made the asked speed at (the setting stays), else the candidate's own for it. */
function hertzSet(set: PumpSet, line: MotorLine, askedRpm: number, torqueNm: number): number | null {
  const failedRow = failedRowOf(set);
  const failedLine = set.failed === null || failedRow === null ? null : motorLineOf(set.failed, failedRow);
  const asSet = failedLine === null ? null : hertzFor(failedLine, askedRpm, torqueNm);
  const hertz = asSet ?? hertzFor(line, askedRpm, torqueNm);
  if (hertz === null) return null;
  const { minHertz = null, maxHertz = null } = set.supply.drive ?? {};
  if (maxHertz !== null && hertz > maxHertz) return maxHertz;
  return minHertz !== null && hertz < minHertz ? minHertz : hertz;
}

function restoredOf(
  set: PumpSet,
  row: RatingRow,
  line: MotorLine,
  load: DrivenLoad,
  torqueNm: number,
): Restored | null {
  if (load.motorRpm === null) return null;
  if (set.supply.start === 'drive') {
    const hertz = hertzFor(line, load.motorRpm, torqueNm);
    if (hertz === null || !isTrusted(line, hertz, torqueNm)) return null;
    return restored(row, line, load, { by: 'drive', hertz, sheaveScale: 1 }, load.motorRpm, load.torqueNm);
  }
  if (set.coupling.type !== 'belt' || set.coupling.sheave.changeable === false) return null;
  const rpm = rpmAtPower(line, torqueNm * load.motorRpm);
  if (rpm === null) return null;
  const scale = load.motorRpm / rpm;
  const lossy = load.torqueNm === null ? null : load.torqueNm * scale;
  return restored(row, line, load, { by: 'sheave', hertz: null, sheaveScale: scale }, rpm, lossy);
}

function restored(
  row: RatingRow,
  line: MotorLine,
  load: DrivenLoad,
  { by, hertz, sheaveScale }: Pick<Restored, 'by' | 'hertz' | 'sheaveScale'>,
  rpm: number,
  torqueNm: number | null,
): Restored {
  const motorKw = torqueNm === null ? null : kwOfTorque(torqueNm, rpm);
  return {
    motorRpm: rpm,
    pumpRpm: load.pumpRpm,
    pumpKw: load.shaftKw,
    motorKw,
    loadPct: shareOf(motorKw, row.kw),
    torquePct: shareOf(torqueNm, line.ratedNm),
    amps: motorKw === null ? null : operatingAmps(row, motorKw, hertz),
    by,
    hertz,
    sheaveScale,
  };
}

const shareOf = (part: number | null, whole: number | null): number | null =>
  part === null || whole === null ? null : (100 * part) / whole;

function whyNot(row: RatingRow, load: DrivenLoad): string {
  if (row.kind === 'none') return 'No rating of this motor serves the supply.';
  if (load.exponent === null) return 'The kind of load is not told.';
  if (load.motorRpm === null) return 'The speed asked of the motor is not told.';
  if (load.shaftKw === null) return 'Shaft power is not told.';
  if (row.synchronousRpm === null) return 'Neither poles nor speed of this motor are known.';
  if (row.rpm === null) return 'The plate does not tell the slip.';
  if (row.phi === null) return 'The voltage at the motor is not known.';
  return 'The rated power is not known.';
}

const unsolved = (why: string, isBeyond = false, restored: Restored | null = null): OperatingPoint => ({
  motorRpm: null,
  pumpRpm: null,
  pumpKw: null,
  motorKw: null,
  loadPct: null,
  torquePct: null,
  amps: null,
  flowChangePct: null,
  why,
  isBeyond,
  hertz: null,
  assumes: null,
  restored,
});
