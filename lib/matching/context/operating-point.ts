import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { RatingRow } from './rating-row';

/** Where the candidate would run. Any figure that cannot be told is null; `why` says why the point was not solved. */
export interface OperatingPoint {
  motorRpm: number | null;
  pumpRpm: number | null;
  pumpKw: number | null;
  motorKw: number | null;
  /** motorKw over the row's kw. */
  loadPct: number | null;
  /** Load torque at the motor over its rated torque. */
  torquePct: number | null;
  amps: number | null;
  flowChangePct: number | null;
  why: string | null;
}

export function operatingPointOf(_set: PumpSet, _candidate: Motor, _row: RatingRow): OperatingPoint {
  throw new Error('not yet written');
}
