import type { Motor } from '@/lib/plant/motor';
import type { Dimension, DimensionName, Face, FrameDimensions } from './dimension';
import { unknownDimension } from './dimension-of';
import { dimensionsOf } from './dimensions-of';
import type { FrameSystem } from './frame-text';

const MEASURED_BY = 'measured by a person';

/**
 * The motor's mounting: what a person measured wins over the frame's standard. Kept per motor object, and the frame's part
 * per frame text, since thousands of motors share a few hundred frames.
 */
export function motorDimensions(motor: Motor): FrameDimensions {
  const known = byMotor.get(motor);
  if (known) return known;
  const dimensions = withMeasured(frameDimensions(motor), motor.measured);
  byMotor.set(motor, dimensions);
  return dimensions;
}

const byMotor = new WeakMap<Motor, FrameDimensions>();
const byText = new Map<string, FrameDimensions>();
// Frame texts come from people and files: without an end the map could grow for as long as the process lives.
const TEXTS_KEPT = 5_000;

function frameDimensions(motor: Motor): FrameDimensions {
  const { frame, mounting, poles } = motor;
  const system = systemOf(motor);
  const key = `${frame}\n${mounting}\n${poles}\n${system}`;
  const known = byText.get(key);
  if (known) return known;
  const dimensions = dimensionsOf(frame, { mounting, poles, system: ambiguous(frame) ? system : null });
  if (byText.size >= TEXTS_KEPT) byText.clear();
  byText.set(key, dimensions);
  return dimensions;
}

/** Only a bare "56" or "225" needs the plate's other marks to tell its system. */
const ambiguous = (frame: string | null): boolean => frame !== null && /^\D*(56|225)\s*[AB]?\s*$/i.test(frame);

/**
 * Which standard the rest of the plate follows; null where nothing tells or two marks disagree. NEMA MG 1 alone has the kVA
 * code letter and the design letters A to D; IEC 60034-12 alone has N and H with their Y and E forms. Without either a plate
 * in hp alone is a NEMA one, and one in kW alone with an IM code an IEC one (common practice, no source).
 */
function systemOf({ mounting, codeLetter, design, ratings }: Motor): FrameSystem | null {
  const isNema = codeLetter !== null || (design !== null && /^[A-D]$/.test(design));
  const isIec = design !== null && /^[NH]/.test(design);
  if (isNema || isIec) return isNema && isIec ? null : isNema ? 'NEMA' : 'IEC';
  if (ratings.length === 0) return null;
  if (ratings.every(({ hp }) => hp !== null)) return 'NEMA';
  const isMetric = ratings.every(({ hp, kw }) => hp === null && kw !== null);
  return isMetric && mounting !== null && /^\s*IM\b/i.test(mounting) ? 'IEC' : null;
}

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

function withMeasured(frame: FrameDimensions, measured: Motor['measured']): FrameDimensions {
  const dimensions = { ...frame.dimensions };
  let isMeasured = false;
  for (const [from, to] of Object.entries(DIMENSION_OF) as [keyof typeof DIMENSION_OF, DimensionName][]) {
    const value = measured[from];
    if (value === null) continue;
    dimensions[to] = measuredDimension(value);
    isMeasured = true;
  }
  if (measured.keyWidthMm === null && isOtherShaft(frame, measured.shaftDiameterMm))
    dimensions.keyWidthMm = unknownDimension(`the shaft measured is not that of ${frame.frame}: measure its key`);
  const face = measuredFace(frame.face, measured);
  if (!isMeasured && face === frame.face) return frame;
  // A tape tells the shaft's size, not its ISO class.
  const shaftFit = measured.shaftDiameterMm === null ? frame.shaftFit : null;
  return { ...frame, dimensions, face, shaftFit };
}

/** A tape reads a shaft to about half a millimetre (common practice, no source). */
const TAPE_MM = 0.5;

/** A key goes with its shaft: where the shaft is not the frame's, the frame does not tell the key. */
function isOtherShaft({ dimensions }: FrameDimensions, shaftMm: number | null): boolean {
  const { value } = dimensions.shaftDiameterMm;
  return shaftMm !== null && value !== null && Math.abs(shaftMm - value) > TAPE_MM;
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
  return {
    ...face,
    pitchCircleMm: pitchCircleMm ?? face.pitchCircleMm,
    spigotMm: spigotMm ?? face.spigotMm,
    outsideMm: faceDiameterMm ?? face.outsideMm,
    cite: `${MEASURED_BY}; ${face.cite}`,
  };
}
