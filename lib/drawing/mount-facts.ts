import type { WorkId } from '@/lib/plant/work';

/** What is known of the place, besides the two motors. */
export interface MountFacts {
  /**
   * What lies together in both motors besides the shafts: the drive-end foot holes, the mounting faces, or the shaft ends
   * where the work is to bolt the motor down elsewhere.
   */
  together: 'holes' | 'faces' | 'shaft-ends';
  /** Shims under the failed motor now, mm. */
  shimsPresentMm: number | null;
  hub: { lengthMm: number | null; boreMm: number | null } | null;
  boltMm: number | null;
  /** The work that the findings ask for; what of it has a place in a view is drawn there. */
  work: readonly WorkId[];
  /** What does not meet, and is blue because somebody must act there. */
  act: readonly ('foot-holes' | 'face')[];
  unit: 'mm' | 'in';
}

/** Height of the shims drawn under the failed motor. None are drawn where nobody has told of any; the words say so. */
export const shimsDrawnMm = ({ shimsPresentMm }: Pick<MountFacts, 'shimsPresentMm'>): number =>
  shimsPresentMm === null ? 0 : shimsPresentMm;
