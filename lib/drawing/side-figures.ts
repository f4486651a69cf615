import type { Figure } from './dimension-line';
import type { Mount } from './mount';
import type { Placed } from './place';
import type { Ends } from './shaft-end';

export type SideFigures = Record<'height' | 'shaftEnd' | 'along' | 'diameter', Figure>;

/** What the view from the side tells: the failed motor's figures of the feet are left out where it has none. */
export function sideFigures({ candidate, out, placed, placedOut, facts }: Ends): SideFigures {
  const hasFeet = candidate.feet !== false;
  const old = out === null || out.feet === false ? null : out;
  const ofFeet = (name: string, isAsked: boolean, read: (mount: Mount) => number | null): Figure => ({
    name,
    isAsked,
    in: read(candidate),
    out: old === null ? undefined : read(old),
  });
  const end = (at: Placed | null) => (at === null || at.shaftEndX === null ? null : at.holesX - at.shaftEndX);
  const isByFaces = facts.together === 'faces';
  return {
    height: ofFeet('shaft height', hasFeet, (mount) => mount.heightMm),
    shaftEnd: {
      name: isByFaces ? 'shaft end from the face' : 'shaft end from the drive-end holes',
      isAsked: true,
      in: end(placed),
      out: placedOut === null ? undefined : end(placedOut),
    },
    along: ofFeet('holes along', hasFeet && !isByFaces, (mount) => mount.alongMm),
    diameter: {
      name: 'shaft diameter',
      isAsked: true,
      in: candidate.shaftDiameterMm,
      out: out === null ? undefined : out.shaftDiameterMm,
    },
  };
}
