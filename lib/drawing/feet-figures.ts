import type { Figure } from './dimension-line';
import type { Mount } from './mount';

export type FeetFigures = Record<'across' | 'along' | 'shaftEnd' | 'hole', Figure>;

/** What the view from above tells. */
export function feetFigures(candidate: Mount, out: Mount | null): FeetFigures {
  const of = (name: string, read: (mount: Mount) => number | null): Figure => ({
    name,
    isAsked: true,
    in: read(candidate),
    out: out === null ? undefined : read(out),
  });
  return {
    across: of('holes across', (mount) => mount.acrossMm),
    along: of('holes along', (mount) => mount.alongMm),
    shaftEnd: of('shaft end from the drive-end holes', (mount) => mount.toShaftEndMm),
    hole: of('foot hole diameter', (mount) => mount.footHoleMm),
  };
}
