import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { drivenLoadOf } from '../context/driven-load';
import { LIKE_FOR_LIKE_FLOW_PCT } from '../context/operating-point';
import { ratingRowOf } from '../context/rating-row';

/** Clears binary dust on the safe side: a bound never cuts what the findings let pass in the last digit. */
const WIDE = 1.0001;
/** The findings check up to this share of the rating before they block. */
const NEARLY = 1.02;
/** Beyond this share of the rated torque the findings solve no operating point, and take the plate's speed. */
const TRUSTED = 1.25;
/** Where the plate tells no slip the findings take up to 5 % of the synchronous speed; a little more here. */
const UNKNOWN_SLIP = 0.06;
/** Share of the line amps that the contactors of a star-delta starter carry. */
const IN_DELTA = 0.58;

/** What a motor can do at a supply, at best. NaN where the plate tells too little. */
export interface MotorBound {
  synchronousRpm: number;
  /** The slowest speed the findings could give it. */
  slowestRpm: number;
  /** The greatest power the findings could let pass, before any derating. */
  mostKw: number;
  amps: number;
}

export function motorBoundAt(set: PumpSet, motor: Motor): MotorBound {
  const { synchronousRpm: ns, slipRpm, kw, amps, serviceFactor } = ratingRowOf(set, motor);
  return {
    synchronousRpm: ns === null ? Number.NaN : ns * WIDE,
    slowestRpm: ns === null ? Number.NaN : (ns - TRUSTED * (slipRpm ?? ns * UNKNOWN_SLIP)) / WIDE,
    mostKw: kw === null ? Number.NaN : kw * Math.max(NEARLY, serviceFactor) * WIDE,
    amps: amps === null ? Number.NaN : amps,
  };
}

/** Whether the findings of power, speed or full-load current would block a motor for certain. */
export type LoadBlocks = (bound: MotorBound) => boolean;

/**
 * A bound on power, speed and amps for one set. It answers true only where it is certain; what a set does not tell bounds
 * nothing. Where a sheave or the drive can put the speed right, only power is bounded, at the pump's own speed.
 */
export function loadBlocksOf(set: PumpSet): LoadBlocks {
  const { exponent, motorRpm, shaftKw, efficiency } = drivenLoadOf(set);
  const { contactorA, start } = set.supply;
  const isPutRight = start === 'drive' || set.coupling.type === 'belt';
  const tolerance = (set.load.flowTolerancePct ?? LIKE_FOR_LIKE_FLOW_PCT) / 100;
  const steepness = exponent === null ? 3 : exponent + 1;
  const slack = (1 - Math.min(1, tolerance)) ** steepness;
  const loadKw = shaftKw === null ? 0 : shaftKw / (efficiency ?? 1);
  const mostAmps =
    contactorA === null ? Number.POSITIVE_INFINITY : contactorA / (start === 'star-delta' ? IN_DELTA : 1);
  const tooSlow = isPutRight || motorRpm === null ? 0 : motorRpm * (1 - tolerance);
  const tooFast = isPutRight || motorRpm === null ? Number.POSITIVE_INFINITY : motorRpm * (1 + tolerance);

  // A comparison with NaN is false: what the plate does not tell blocks nothing.
  return ({ synchronousRpm, slowestRpm, mostKw, amps }) =>
    loadKw * slack > mostKw || amps > mostAmps * WIDE || synchronousRpm < tooSlow || slowestRpm > tooFast;
}
