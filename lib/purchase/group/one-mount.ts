import { type FrameAsked, frameAskedFor } from '@/lib/matching/buy/frame-asked-for';
import type { RatingAsked } from '@/lib/matching/buy/ratings-asked-for';
import { seatOf } from '@/lib/matching/context/seat';
import type { PumpSet } from '@/lib/plant/set';
import { type Contradiction, shared } from './contradiction';

/**
 * The frame and mounting of one motor for all of them: feet and face where some ask for feet and some for one face, in one
 * position; else what most ask, with the contradiction noted.
 */
export function oneMount(sets: readonly PumpSet[], asked: RatingAsked, noted: Contradiction[]): FrameAsked {
  const { system, rating } = asked;
  const own = sets.map((set) => ({ set, asked: frameAskedFor(set, system, rating.frame) }));
  const faces = own.filter(({ set }) => set.mounting !== 'foot');
  const [withFace] = faces;
  const areFeetAskedToo = own.some(({ set }) => set.mounting !== 'face');
  const isOneFace = new Set(faces.map(({ set }) => faceOf(set))).size === 1;
  const isOnePosition = new Set(sets.map(({ shaftDirection }) => shaftDirection)).size === 1;
  if (withFace !== undefined && areFeetAskedToo && isOneFace && isOnePosition) {
    const both = frameAskedFor({ ...withFace.set, mounting: 'foot-and-face' }, system, rating.frame);
    const plain = own.filter(({ set }) => set.mounting === 'foot').map(({ asked }) => asked.frame);
    // The face adds a C to a NEMA frame and nothing to an IEC one: with the shaft of another kind it is another motor.
    if (plain.every((frame) => frame === both.frame || `${frame}C` === both.frame)) return both;
  }
  if (!isOneFace && faces.length > 0)
    shared(
      faces.map(({ set }) => ({ tag: set.tag, value: faceOf(set) })),
      { id: 'face', label: 'Face' },
      String,
      noted,
    );
  const told = own.map(({ set, asked }) => ({ tag: set.tag, value: asked }));
  const most = shared(told, { id: 'mounting', label: 'Frame and mounting' }, mountText, noted);
  if (most === null) throw new Error('no set asks for a mounting');
  return most;
}

/** The face that the set offers, by name; "not told" is one of its own. */
const faceOf = (set: PumpSet): string => seatOf(set).face?.name ?? 'not told';

const mountText = ({ frame, mounting }: FrameAsked) => (mounting === null ? frame : `${frame}, ${mounting}`);
