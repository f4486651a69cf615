import type { PumpSet } from '@/lib/plant/set';
import type { ShaftKind } from '@/lib/standards/dimension';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { seatOf } from '../context/seat';

/** `mounting` null: the frame tells it, or nothing does. */
export interface FrameAsked {
  frame: string;
  mounting: string | null;
}

/** The frame and mounting code to ask for, from the frame the standard assigns to a rating ("184T", "112M"). */
export function frameAskedFor(set: PumpSet, system: 'NEMA' | 'IEC', assigned: string): FrameAsked {
  const shaft = set.failed === null ? null : motorDimensions(set.failed).shaft;
  return system === 'NEMA'
    ? { frame: nemaFrame(set, assigned, shaft), mounting: nemaMounting(set) }
    : { frame: assigned, mounting: imCode(set) };
}

/** The suffixes the place asks for: a pump shaft, a short shaft as the failed motor's, a C-face. */
function nemaFrame(set: PumpSet, assigned: string, shaft: ShaftKind | null): string {
  const number = assigned.replace(/[A-Z]+$/, '');
  const isPumpShaft = set.coupling.type === 'close-coupled' && (shaft === 'JM' || shaft === 'JP');
  if (isPumpShaft) return `${number}${shaft}`;
  // A short shaft is for couplings only; a belt needs the long one whatever the table assigns.
  const short = set.coupling.type !== 'belt' && (shaft === 'short' || (shaft === null && assigned.endsWith('TS')));
  return `${number}T${short ? 'S' : ''}${set.mounting === 'foot' ? '' : 'C'}`;
}

/**
 * NEMA frames tell their face, and feet where there is none; whether a motor with a face has feet is asked in words. An
 * upright one is asked by the code of IEC 60034-7, a C-face being one with tapped holes.
 */
function nemaMounting(set: PumpSet): string | null {
  const direction = set.shaftDirection ?? 'horizontal';
  if (direction === 'horizontal') return WORDS[set.mounting];
  if (set.mounting === 'foot') return FOOT[direction];
  return (set.mounting === 'face' ? FACE : FOOT_AND_FACE).FT[direction];
}

const WORDS = { foot: null, face: 'face', 'foot-and-face': 'foot and face' } as const;

/** IEC 60034-7 Code I by the place's feet, kind of flange and shaft direction. Null: the kind of flange is not known. */
function imCode(set: PumpSet): string | null {
  const direction = set.shaftDirection ?? 'horizontal';
  if (set.mounting === 'foot') return FOOT[direction];
  const kind = seatOf(set).face?.kind;
  if (kind !== 'FF' && kind !== 'FT') return null;
  return (set.mounting === 'face' ? FACE : FOOT_AND_FACE)[kind][direction];
}

const FOOT = { horizontal: 'IM B3', down: 'IM V5', up: 'IM V6' } as const;
const FACE = {
  FF: { horizontal: 'IM B5', down: 'IM V1', up: 'IM V3' },
  FT: { horizontal: 'IM B14', down: 'IM V18', up: 'IM V19' },
} as const;
const FOOT_AND_FACE = {
  FF: { horizontal: 'IM B35', down: 'IM V15', up: 'IM V35' },
  FT: { horizontal: 'IM B34', down: 'IM V17', up: 'IM V37' },
} as const;
