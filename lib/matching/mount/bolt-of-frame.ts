import type { Dimension, FrameDimensions } from '@/lib/standards/dimension';
import { unknownDimension } from '@/lib/standards/dimension-of';
import { mmOfInches } from '@/lib/units/length';

/**
 * The foot bolt a frame's hole is made for: the largest bolt of its system that goes through with play. Unknown where
 * the frame fixes no hole.
 */
export function boltOfFrame({ frame, system, dimensions }: FrameDimensions): Dimension {
  const { value, origin, status } = dimensions.footHoleMm;
  if (value === null) return unknownDimension('the foot hole of the failed motor is unknown');
  const bolts = system === null ? BOTH : system === 'IEC' ? METRIC : INCH;
  const mm = bolts.findLast((bolt) => bolt + LEAST_PLAY_MM <= value);
  if (mm === undefined) return unknownDimension(`no usual bolt goes through a hole of ${value} mm`);
  const cite =
    system === null
      ? 'largest usual bolt of the foot hole measured on the failed motor: common practice, no source'
      : `bolt of the ${frame} foot hole: ${system === 'IEC' ? IEC_CITE : NEMA_CITE}`;
  return { value: mm, plus: null, minus: null, alternatives: [], origin, status, cite };
}

const IEC_CITE = 'IEC 60072-1 (from memory)';
const NEMA_CITE = 'NEMA MG 1-2016 4.4.1, hole 0.03 in over the bolt (read in one text)';
// 0.8 mm over M5 is the least play of the IEC holes, 0.028 in (printed to 0.01 in) of the NEMA ones.
const LEAST_PLAY_MM = 0.6;
/** ISO 261 first-choice sizes met in motor feet. */
const METRIC = [5, 6, 8, 10, 12, 16, 20, 24, 30, 36];
const INCH = [1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1, 1.25].map(mmOfInches);
const BOTH = [...METRIC, ...INCH].toSorted((a, b) => a - b);
