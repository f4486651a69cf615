import type { Motor } from '@/lib/plant/motor';
import type { FrameDimensions } from './dimension';
import { dimensionsOf } from './dimensions-of';
import type { FrameSystem } from './frame-text';
import { withMeasured } from './with-measured';

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
