import type { Dimension, Face, FrameDimensions } from '@/lib/standards/dimension';

/** What a view needs to know of one motor. Lengths in mm; null is not known and is not drawn. */
export interface Mount {
  name: string;
  /** False: it has no feet. */
  feet: boolean | null;
  heightMm: number | null;
  acrossMm: number | null;
  alongMm: number | null;
  /** Further hole patterns the same feet also have. */
  acrossOthersMm: readonly number[];
  alongOthersMm: readonly number[];
  footHoleMm: number | null;
  toShoulderMm: number | null;
  /** Drive-end holes to the end of the shaft. */
  toShaftEndMm: number | null;
  shaftDiameterMm: number | null;
  shaftLengthMm: number | null;
  keyWidthMm: number | null;
  face: Face | null;
  /** Side of the box seen from the drive end. */
  terminalBox: 'left' | 'right' | 'top' | null;
}

/** What the set offers a motor, where a person measured it at the set. The words are those of the seat. */
export interface SeatFigures {
  shaftHeight: Dimension;
  holesAcross: Dimension;
  holesAlong: Dimension;
  holeToShaftEnd: Dimension;
  shaftDiameter: Dimension;
  shaftLength: Dimension;
  keyWidth: Dimension;
  face: Face | null;
}

/** A motor as its frame or the tape has it. */
export function mountOfMotor(name: string, fit: FrameDimensions, terminalBox: Mount['terminalBox'] = null): Mount {
  const d = fit.dimensions;
  return {
    name,
    feet: fit.holding.feet,
    heightMm: d.shaftHeightMm.value,
    acrossMm: d.holesAcrossMm.value,
    alongMm: d.holesAlongMm.value,
    acrossOthersMm: d.holesAcrossMm.alternatives,
    alongOthersMm: d.holesAlongMm.alternatives,
    footHoleMm: d.footHoleMm.value,
    toShoulderMm: d.holeToShoulderMm.value,
    toShaftEndMm: sum(d.holeToShoulderMm.value, d.shaftLengthMm.value),
    shaftDiameterMm: d.shaftDiameterMm.value,
    shaftLengthMm: d.shaftLengthMm.value,
    keyWidthMm: d.keyWidthMm.value,
    face: fit.face,
    terminalBox,
  };
}

/** What goes out: the failed motor's figures, with what the seat has measured in their place. */
export function mountOfSeat(name: string, seat: SeatFigures, failed: FrameDimensions | null): Mount {
  const from = failed === null ? null : mountOfMotor(name, failed);
  const toShaftEndMm = seat.holeToShaftEnd.value;
  const shaftLengthMm = seat.shaftLength.value;
  return {
    name,
    feet: from === null ? null : from.feet,
    heightMm: seat.shaftHeight.value,
    acrossMm: seat.holesAcross.value,
    alongMm: seat.holesAlong.value,
    acrossOthersMm: seat.holesAcross.alternatives,
    alongOthersMm: seat.holesAlong.alternatives,
    footHoleMm: from === null ? null : from.footHoleMm,
    // A measured shaft end moves the shoulder with it.
    toShoulderMm: toShaftEndMm === null || shaftLengthMm === null ? null : toShaftEndMm - shaftLengthMm,
    toShaftEndMm,
    shaftDiameterMm: seat.shaftDiameter.value,
    shaftLengthMm,
    keyWidthMm: seat.keyWidth.value,
    face: seat.face,
    terminalBox: null,
  };
}

const sum = (a: number | null, b: number | null) => (a === null || b === null ? null : a + b);
