import type { PumpSet } from '@/lib/plant/set';
import type { Dimension, Face, ShaftKind } from '@/lib/standards/dimension';

/**
 * What the set offers a motor: measured at the set, else taken from the failed motor's frame, else unknown.
 * Lengths in mm. `holeToShaftEndMm` is from the drive-end foot holes to the end of the shaft.
 */
export interface Seat {
  needsFeet: boolean;
  needsFace: boolean;
  shaftHeight: Dimension;
  holesAcross: Dimension;
  holesAlong: Dimension;
  /** Foot bolt diameter. */
  bolt: Dimension;
  holeToShaftEnd: Dimension;
  face: Face | null;
  /** Hub bore where told, else the failed motor's shaft. */
  shaftDiameter: Dimension;
  shaftLength: Dimension;
  keyWidth: Dimension;
  /** The failed motor's shaft kind; null when there is no plate. */
  shaft: ShaftKind | null;
  /** How the shaft drives: told, or by the coupling's type. */
  input: 'hub' | 'quill' | 'pump-shaft' | null;
}

export function seatOf(_set: PumpSet): Seat {
  throw new Error('not yet written');
}
