import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { failedRowOf } from './driven-load';
import type { RatingRow } from './rating-row';

/**
 * True where the failed motor's plate shows the same figures for this supply, so that settings and protection made for
 * it still hold. A figure unknown on both plates is not the same.
 */
export function isSamePlate(set: PumpSet, candidate: Motor, row: RatingRow): boolean {
  const { failed } = set;
  const was = failedRowOf(set)?.plate;
  const is = row.plate;
  if (failed === null || was === undefined || was === null || is === null) return false;
  return (
    failed.kind === candidate.kind &&
    isSame(was.hertz, is.hertz) &&
    isSame(was.kw, is.kw) &&
    isSame(was.rpm, is.rpm) &&
    isSame(was.amps, is.amps) &&
    was.pf === is.pf &&
    was.volts === is.volts &&
    was.voltsMin === is.voltsMin &&
    was.voltsMax === is.voltsMax &&
    (is.volts !== null || is.voltsMin !== null || is.voltsMax !== null)
  );
}

const isSame = (a: number | null, b: number | null) => a !== null && a === b;
