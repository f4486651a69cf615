import type { PumpSet } from '@/lib/plant/set';
import type { Dimension, Face, FrameDimensions, ShaftKind } from '@/lib/standards/dimension';
import { unknownDimension } from '@/lib/standards/dimension-of';
import { dimensionsOf } from '@/lib/standards/dimensions-of';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { boltOfFrame } from '../mount/bolt-of-frame';

/**
 * What the set offers a motor: measured at the set, else taken from the failed motor's frame, else unknown.
 * Lengths in mm. `holeToShaftEnd` is from the drive-end foot holes to the end of the shaft.
 */
export interface Seat {
  needsFeet: boolean;
  needsFace: boolean;
  /** Height of the motor's shaft above its own feet, as it stood there: shims lie below and are not in it. */
  shaftHeight: Dimension;
  holesAcross: Dimension;
  holesAlong: Dimension;
  /** Foot bolt diameter. */
  bolt: Dimension;
  holeToShaftEnd: Dimension;
  /** The face told at the set, read by the standards' names; else the failed motor's. */
  face: Face | null;
  /** The face as it was told; with a null `face` it could not be read. */
  faceTold: string | null;
  /** Hub bore where told, else the failed motor's shaft. */
  shaftDiameter: Dimension;
  shaftLength: Dimension;
  /** Length of the failed motor's shaft beyond its face; null unknown. */
  projectionMm: number | null;
  keyWidth: Dimension;
  /** The failed motor's frame and shaft kind; null when there is no plate. */
  frame: string | null;
  shaft: ShaftKind | null;
  shaftFit: string | null;
  /** How the shaft drives: told, or by the coupling's type. */
  input: 'hub' | 'quill' | 'pump-shaft';
}

/** A fact of the set alone: kept per set. */
export function seatOf(set: PumpSet): Seat {
  const known = kept.get(set);
  if (known !== undefined) return known;
  const seat = workOut(set);
  kept.set(set, seat);
  return seat;
}

const kept = new WeakMap<PumpSet, Seat>();

function workOut(set: PumpSet): Seat {
  const { seat, coupling } = set;
  const failed = set.failed === null ? null : motorDimensions(set.failed);
  const hubBore = toldAtSet(coupling.hub.boreMm);
  return {
    needsFeet: set.mounting !== 'face',
    needsFace: set.mounting !== 'foot',
    shaftHeight: toldAtSet(seat.shaftHeightMm) ?? failed?.dimensions.shaftHeightMm ?? NO_PLATE,
    holesAcross: toldAtSet(seat.holesAcrossMm) ?? failed?.dimensions.holesAcrossMm ?? NO_PLATE,
    holesAlong: toldAtSet(seat.holesAlongMm) ?? failed?.dimensions.holesAlongMm ?? NO_PLATE,
    bolt: toldAtSet(seat.boltMm) ?? (failed === null ? NO_PLATE : boltOfFrame(failed)),
    holeToShaftEnd: toldAtSet(seat.holeToShaftEndMm) ?? (failed === null ? NO_PLATE : holeToShaftEndOf(failed)),
    face: seat.face === null ? (failed?.face ?? null) : dimensionsOf(seat.face).face,
    faceTold: seat.face,
    shaftDiameter: hubBore ?? failed?.dimensions.shaftDiameterMm ?? NO_PLATE,
    shaftLength: failed?.dimensions.shaftLengthMm ?? NO_PLATE,
    projectionMm: failed === null ? null : projectionOf(failed),
    keyWidth: toldAtSet(coupling.hub.keyWidthMm) ?? failed?.dimensions.keyWidthMm ?? NO_PLATE,
    frame: failed?.frame ?? null,
    shaft: failed?.shaft ?? null,
    // A bore told in figures carries no ISO class with it.
    shaftFit: hubBore === null ? (failed?.shaftFit ?? null) : null,
    input: coupling.input ?? inputOf(set),
  };
}

const NO_PLATE = unknownDimension('not measured at the set, and there is no plate of the failed motor');

function toldAtSet(mm: number | null): Dimension | null {
  if (mm === null) return null;
  return {
    value: mm,
    plus: null,
    minus: null,
    alternatives: [],
    origin: 'measured',
    status: null,
    cite: 'measured at the set by a person',
  };
}

function inputOf({ coupling, mounting }: PumpSet): Seat['input'] {
  if (coupling.type === 'close-coupled') return 'pump-shaft';
  return coupling.type === 'gear' && mounting !== 'foot' ? 'quill' : 'hub';
}

/** From the drive-end foot holes to the shaft end: holes to shoulder, and the shaft from there. */
export function holeToShaftEndMm({ dimensions }: FrameDimensions): number | null {
  const shoulder = dimensions.holeToShoulderMm.value;
  const length = dimensions.shaftLengthMm.value;
  return shoulder === null || length === null ? null : tidy(shoulder + length);
}

/** Clears binary dust: 82.55 − 3.048 is 79.502. */
const tidy = (mm: number) => Math.round(mm * 1e6) / 1e6;

function holeToShaftEndOf(failed: FrameDimensions): Dimension {
  const mm = holeToShaftEndMm(failed);
  const { holeToShoulderMm: shoulder, shaftLengthMm: length } = failed.dimensions;
  if (mm === null) return unknownDimension(shoulder.value === null ? shoulder.cite : length.cite);
  const weaker = shoulder.origin === 'standard' ? shoulder : length;
  return { ...weaker, value: mm, plus: null, minus: null, alternatives: [] };
}

/** How far the shaft stands beyond the face; null where there is no face or a part is unknown. */
export function projectionOf({ face, dimensions }: FrameDimensions): number | null {
  const length = dimensions.shaftLengthMm.value;
  if (face === null || face.shoulderToFaceMm === null || length === null) return null;
  return tidy(length - face.shoulderToFaceMm);
}
