import type { Mount } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';

/** One motor alone, in mm: nothing is known of a place it might go to. */
export const factsAlone = (mount: Mount): MountFacts => ({
  together: mount.face !== null && (mount.feet === false || mount.heightMm === null) ? 'faces' : 'holes',
  shimsPresentMm: null,
  hub: null,
  boltMm: null,
  work: [],
  act: [],
  unit: 'mm',
});
