/** What is known of the place, besides the two motors. */
export interface MountFacts {
  /** What lies together in both motors besides the shafts: the drive-end foot holes, or the mounting faces. */
  together: 'holes' | 'faces';
  /** Shims under the failed motor now, mm. */
  shimsPresentMm: number | null;
  hub: { lengthMm: number | null; boreMm: number | null } | null;
  boltMm: number | null;
  /** What is blue because somebody must act there, besides the shims. */
  act: readonly ('bushing' | 'foot-holes' | 'face')[];
  unit: 'mm' | 'in';
}

/** Height of the shims drawn under the failed motor. None are drawn where nobody has told of any; the words say so. */
export const shimsDrawnMm = ({ shimsPresentMm }: MountFacts): number => (shimsPresentMm === null ? 0 : shimsPresentMm);
