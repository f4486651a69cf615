import type { Problem, Reading } from '@/lib/plant/reading';
import type { FrameDimensions } from './dimension';
import { unknownDimensions } from './dimension-of';
import { frameName } from './frame-name';
import type { FrameSystem, FrameText, NemaFrameName } from './frame-text';
import { iecDimensions } from './iec-dimensions';
import { iecFlange, unknownFlange } from './iec-face';
import { type Mounting, mountingCode } from './mounting-code';
import { nemaDimensions } from './nema-dimensions';

export interface FrameOptions {
  /** IM code, NEMA assembly or plain words. */
  mounting?: string | null;
  poles?: number | null;
  /** Decides where one text is a frame of both systems ("56", "225"). */
  system?: FrameSystem | null;
}

/** Reads a frame and its options, with every problem at once; nothing is guessed. */
export function readFrame(frame: string, options: FrameOptions = {}): Reading<FrameDimensions> {
  const { read, held, problems } = readBoth(frame, options);
  const { poles = null } = options;
  if (poles !== null && (!Number.isInteger(poles) || poles < 2 || poles % 2 === 1))
    problems.push({ path: 'poles', value: String(poles), says: 'must be an even number from 2 up' });
  if (!read.ok) return { ok: false, problems };
  const text = read.value;
  if (text.mounting && held && !agree(text.mounting, held))
    problems.push({ path: 'mounting', value: held.name, says: `is not what the frame says: ${text.mounting.name}` });
  if (text.poles !== null && poles !== null && text.poles !== poles)
    problems.push({ path: 'poles', value: String(poles), says: `is not what the frame says: ${text.poles} poles` });
  const { name } = text;
  const mounting = held ?? text.mounting;
  if (name.system === 'IEC' && name.flange !== null && mounting !== null && !takes(mounting, name.flange))
    problems.push({ path: 'mounting', value: mounting.name, says: `does not go with flange ${name.flange}` });
  const clash = name.system === 'NEMA' && mounting !== null ? clashOf(name, mounting) : null;
  if (clash !== null && mounting !== null) problems.push({ path: 'mounting', value: mounting.name, says: clash });
  if (name.system === null && mounting !== null)
    problems.push({
      path: 'mounting',
      value: mounting.name,
      says: `has no frame to hold: ${name.frame} is a flange alone`,
    });
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: resolve(text, mounting, text.poles ?? poles) };
}

/**
 * The mounting of a frame for a caller with any text: what is not understood, or contradicts itself, is unknown.
 * `readFrame` says why.
 */
export function dimensionsOf(frame: string | null, options: FrameOptions = {}): FrameDimensions {
  if (frame === null) return heldOnly('', 'no frame is told', readMounting(options));
  const { read, held } = readBoth(frame, options);
  if (!read.ok) {
    const [problem] = read.problems;
    return heldOnly(frame.trim(), problem ? `frame "${frame.trim()}" ${problem.says}` : null, held);
  }
  const text = read.value;
  const poles = options.poles ?? null;
  const isAgreed = held === null || text.mounting === null || agree(text.mounting, held);
  return resolve(
    text,
    isAgreed ? (held ?? text.mounting) : null,
    text.poles === null || poles === null || text.poles === poles ? (text.poles ?? poles) : null,
  );
}

function readBoth(frame: string, { mounting = null, system = null }: FrameOptions) {
  const problems: Problem[] = [];
  let held: Mounting | null = null;
  if (mounting !== null && mounting.trim() !== '') {
    const code = mountingCode(mounting);
    if (code.ok) held = code.value;
    else problems.push(...code.problems);
  }
  // NEMA motors carry IM codes too, but a NEMA frame with a face says so: "56" with IM B14 can only be the IEC frame.
  const first = frameName(frame, { system });
  const read =
    !first.ok && system === null && held?.isIec && held.hasFace === true
      ? orFirst(first, frameName(frame, { system: 'IEC' }))
      : first;
  if (!read.ok) problems.unshift(...read.problems);
  return { read, held, problems };
}

function readMounting({ mounting = null }: FrameOptions): Mounting | null {
  const code = mounting === null ? null : mountingCode(mounting);
  return code?.ok ? code.value : null;
}

const orFirst = (first: Reading<FrameText>, second: Reading<FrameText>): Reading<FrameText> =>
  second.ok ? second : first;

const agree = (a: Mounting, b: Mounting): boolean =>
  (a.feet === null || b.feet === null || a.feet === b.feet) &&
  (a.face === null || b.face === null || a.face === b.face);

/** A NEMA frame tells its face in its letters; a code that says otherwise is one of two wrong things. */
function clashOf(name: NemaFrameName, mounting: Mounting): string | null {
  if (name.hasSpecialMounting) return null;
  const hasFace = name.face !== null || name.isJetPump;
  if (mounting.hasFace === true && !hasFace) return `has a face and ${name.frame} names none, as ${name.frame}C would`;
  if (mounting.face === 'none' && hasFace) return `has no face and ${name.frame} names one`;
  return null;
}

const takes = (mounting: Mounting, flange: string): boolean =>
  mounting.face === null ? mounting.hasFace !== false : flange.startsWith(mounting.face);

function resolve({ name }: FrameText, mounting: Mounting | null, poles: number | null): FrameDimensions {
  if (name.system === 'NEMA') return nemaDimensions(name, mounting);
  if (name.system === 'IEC') return iecDimensions(name, mounting, poles);
  return { ...nothingKnown(name.frame, `${name.frame} is a flange alone`), face: iecFlange(name.frame), system: 'IEC' };
}

/** No frame is understood, but the code still tells how the motor is held. */
function heldOnly(frame: string, why: string | null, mounting: Mounting | null): FrameDimensions {
  const nothing = nothingKnown(frame, why);
  if (mounting === null) return nothing;
  const { feet, hasFace: face, shaft, positions } = mounting;
  const kind = mounting.face === 'FF' || mounting.face === 'FT' ? mounting.face : null;
  return {
    ...nothing,
    holding: { feet, face, shaft, positions },
    // A NEMA motor may carry an IM code too: only where the code names free or tapped holes is the kind known.
    face: kind === null ? null : unknownFlange(kind, 'the frame is not known: measure the face'),
    shaft: mounting.isTaper ? 'taper' : 'plain',
  };
}

function nothingKnown(frame: string, why: string | null): FrameDimensions {
  return {
    frame,
    system: null,
    dimensions: unknownDimensions(why),
    face: null,
    holding: { feet: null, face: null, shaft: null, positions: [] },
    shaft: 'plain',
    shaftFit: null,
  };
}
