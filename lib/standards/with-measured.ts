import type { Motor } from '@/lib/plant/motor';
import { figure } from '@/lib/units/figure';
import type { Dimension, DimensionName, Face, FrameDimensions } from './dimension';
import { unknownDimension } from './dimension-of';
import { iecFlange } from './iec-face';
import { keyForShaft } from './key-for-shaft';

/** The frame's dimensions with what a person measured in their place. */
export function withMeasured(frame: FrameDimensions, measured: Motor['measured']): FrameDimensions {
  const dimensions = { ...frame.dimensions };
  let isMeasured = false;
  for (const [from, to] of Object.entries(DIMENSION_OF) as [keyof typeof DIMENSION_OF, DimensionName][]) {
    const value = measured[from];
    if (value === null) continue;
    dimensions[to] = measuredDimension(value);
    isMeasured = true;
  }
  const otherKey = measured.shaftDiameterMm === null ? null : keyOfOtherShaft(frame, measured.shaftDiameterMm);
  if (otherKey && measured.keyWidthMm === null) dimensions.keyWidthMm = otherKey;
  const face = measuredFace(frame.face, measured);
  if (!isMeasured && face === frame.face) return frame;
  // A tape tells the shaft's size, not its ISO class.
  const shaftFit = measured.shaftDiameterMm === null ? frame.shaftFit : null;
  return { ...frame, dimensions, face, shaftFit };
}

const MEASURED_BY = 'measured by a person';

/** Where each measured figure goes; a hole measured is the foot hole. */
const DIMENSION_OF = {
  shaftHeightMm: 'shaftHeightMm',
  holesAcrossMm: 'holesAcrossMm',
  holesAlongMm: 'holesAlongMm',
  holeMm: 'footHoleMm',
  holeToShoulderMm: 'holeToShoulderMm',
  shaftDiameterMm: 'shaftDiameterMm',
  shaftLengthMm: 'shaftLengthMm',
  keyWidthMm: 'keyWidthMm',
} as const satisfies Partial<Record<keyof Motor['measured'], DimensionName>>;

/** A tape reads a shaft to about half a millimetre (common practice, no source). */
const TAPE_MM = 0.5;

/** A key goes with its shaft: where the shaft measured is not the frame's, the frame does not tell the key. */
function keyOfOtherShaft({ frame, system, dimensions }: FrameDimensions, shaftMm: number): Dimension | null {
  const { value } = dimensions.shaftDiameterMm;
  if (value === null || Math.abs(shaftMm - value) <= TAPE_MM) return null;
  const usual = system === null ? null : keyForShaft(shaftMm, system);
  const hint = usual === null ? '' : ` (${figure(usual)} mm is usual on ${figure(shaftMm)} mm)`;
  return unknownDimension(`the shaft measured is not that of ${frame}: measure its key${hint}`);
}

const measuredDimension = (value: number): Dimension => ({
  value,
  plus: null,
  minus: null,
  alternatives: [],
  origin: 'measured',
  status: null,
  cite: MEASURED_BY,
});

/** The face as measured. Without a frame's face nobody told its kind (tapped or through), so the figures alone make none. */
function measuredFace(face: Face | null, { pitchCircleMm, spigotMm, faceDiameterMm }: Motor['measured']): Face | null {
  if (face === null || (pitchCircleMm === null && spigotMm === null && faceDiameterMm === null)) return face;
  const base = pitchCircleMm === null ? face : faceOfCircle(face, pitchCircleMm);
  return {
    ...base,
    pitchCircleMm: pitchCircleMm ?? base.pitchCircleMm,
    spigotMm: spigotMm ?? base.spigotMm,
    outsideMm: faceDiameterMm ?? base.outsideMm,
    cite: `${MEASURED_BY}; ${base.cite}`,
  };
}

/** A tape reads a bolt circle to about half a millimetre (common practice, no source). */
const CIRCLE_MM = 0.5;

/**
 * The face whose bolt circle was measured. Where it is not the frame's, it is the flange of the same kind with that circle,
 * or one of which nothing else is known.
 */
function faceOfCircle(face: Face, circleMm: number): Face {
  if (face.pitchCircleMm !== null && Math.abs(circleMm - face.pitchCircleMm) <= CIRCLE_MM) return face;
  const { kind, status } = face;
  const flange = kind === 'FF' || kind === 'FT' ? iecFlange(`${kind}${Math.round(circleMm)}`, true) : null;
  if (flange !== null) return flange;
  if (face.pitchCircleMm === null) return face;
  const name = `${kind} face of ${figure(circleMm)} mm`;
  const nothing = { spigotMm: null, outsideMm: null, holes: null, hole: null, shoulderToFaceMm: null };
  return {
    name,
    kind,
    pitchCircleMm: circleMm,
    ...nothing,
    optional: true,
    status,
    cite: `not the face of ${face.name}`,
  };
}
