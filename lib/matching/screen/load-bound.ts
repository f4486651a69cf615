import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { drivenLoadOf } from '../context/driven-load';
import { LIKE_FOR_LIKE_FLOW_PCT } from '../context/operating-point';
import { ratingRowOf } from '../context/rating-row';

/** Room for what the findings allow and a bound must not cut: plate tolerances, and rounding in the last digit. */
const WIDE = 1.0001;
/** The findings check up to this share of the rating before they block. */
const NEARLY = 1.02;
/** Beyond this share of the rated torque the findings solve no operating point. */
const TRUSTED = 1.25;
/** A plate's slip may be out by this share: so much wider is the flow tolerance. */
const SLIP_TOLERANCE = 0.2;
/** Where the plate tells no slip the findings take up to this share of the synchronous speed; a little more here. */
const UNKNOWN_SLIP = 0.06;

/** What a motor can do at one supply, at best: columns of one number a motor. NaN where the plate tells too little. */
export interface MotorBounds {
  synchronousRpm: Float64Array;
  /** The slowest speed at which the findings would solve a point. */
  slowestRpm: Float64Array;
  /** Share of the speed by which its plate may be out. */
  plateTolerance: Float64Array;
  /** The torque up to which the findings solve a point. */
  trustedNm: Float64Array;
  /** The greatest power the findings may let pass, before any derating. */
  mostKw: Float64Array;
}

export function motorBoundsAt(set: PumpSet, motors: readonly Motor[]): MotorBounds {
  const column = () => new Float64Array(motors.length).fill(Number.NaN);
  const bounds: MotorBounds = {
    synchronousRpm: column(),
    slowestRpm: column(),
    plateTolerance: column(),
    trustedNm: column(),
    mostKw: column(),
  };
  motors.forEach((motor, i) => {
    const { synchronousRpm: ns, slipRpm, fullLoadTorqueNm, phi, kw, serviceFactor, kind } = ratingRowOf(set, motor);
    if (kw !== null) bounds.mostKw[i] = kw * Math.max(NEARLY, serviceFactor) * WIDE;
    if (ns === null || kind === 'none') return;
    const slip = slipRpm ?? ns * UNKNOWN_SLIP;
    bounds.synchronousRpm[i] = ns;
    bounds.slowestRpm[i] = ns - TRUSTED * slip;
    bounds.plateTolerance[i] = (SLIP_TOLERANCE * slip) / (ns - slip);
    if (fullLoadTorqueNm !== null && phi !== null) bounds.trustedNm[i] = TRUSTED * fullLoadTorqueNm * phi * phi;
  });
  return bounds;
}

/** Whether the findings of power or speed would block the i-th motor for certain. */
export type LoadBlocks = (bounds: MotorBounds, i: number) => boolean;

/**
 * A bound on power and speed for one set. It answers true only where it is certain; a set that tells too little blocks
 * nothing. Where speed can be put right by a sheave or the drive, only power is bounded, at the pump's own speed.
 */
export function loadBlocksOf(set: PumpSet): LoadBlocks {
  const { exponent, motorRpm, shaftKw, efficiency, torqueNm, losslessNm } = drivenLoadOf(set);
  const isPutRight = set.supply.start === 'drive' || set.coupling.type === 'belt';
  const tolerance = (set.load.flowTolerancePct ?? LIKE_FOR_LIKE_FLOW_PCT) / 100;
  const loadKw = shaftKw === null ? null : shaftKw / (efficiency ?? 1);
  const nm = torqueNm ?? losslessNm;
  const steepness = exponent === null ? 3 : exponent + 1;
  const isSpeedAsked = !isPutRight && motorRpm !== null;

  return (bounds, i) => {
    const ns = bounds.synchronousRpm[i] as number;
    const mostKw = bounds.mostKw[i] as number;
    const wide = tolerance + (bounds.plateTolerance[i] as number);
    if (!isSpeedAsked) return loadKw !== null && loadKw * (1 - Math.min(1, wide)) ** steepness > mostKw;
    if (Number.isNaN(ns)) return false;
    const slowest = bounds.slowestRpm[i] as number;
    const isTrusted = nm === null || exponent === null || isCarried(nm, ns / motorRpm, exponent, bounds, i);
    if (isTrusted && (ns < motorRpm * (1 - wide) || slowest > motorRpm * (1 + wide))) return true;
    return loadKw !== null && loadKw * Math.min(1, slowest / motorRpm) ** steepness > mostKw;
  };
}

const isCarried = (nm: number, speedUp: number, exponent: 0 | 2, { trustedNm }: MotorBounds, i: number): boolean =>
  nm * Math.max(1, speedUp) ** exponent <= (trustedNm[i] as number);
