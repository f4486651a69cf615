import { mmOfPrinted } from './dimension-of';
import type { FrameSystem } from './frame-text';
import { iecKeys } from './tables/iec-keys';
import { nemaFootFrames } from './tables/nema-foot-frames';

/**
 * Width in mm of the key that a shaft usually has: by the range of diameters (DIN 6885-1, ISO 773) for IEC, that of the
 * frames with this shaft (NEMA MG 1 4.4.1) for NEMA. Null: no table read lists the shaft, or it has a flat.
 */
export function keyForShaft(shaftMm: number, system: FrameSystem): number | null {
  if (system === 'IEC') return iecKeys.rows.find(({ over, to }) => shaftMm > over && shaftMm <= to)?.b[0] ?? null;
  const row = nemaFootFrames.rows.find(
    ({ U, S }) => S[0] !== 'flat' && Math.abs(mmOfPrinted(U[0]) - shaftMm) < SAME_MM,
  );
  return row === undefined || row.S[0] === 'flat' ? null : mmOfPrinted(row.S[0]);
}

/** Inch shafts differ by 1/8 in and more, a tape reads to about half a millimetre. */
const SAME_MM = 0.5;
