import type { Motor } from '@/lib/plant/motor';
import type { FrameDimensions } from './dimension';

/** The motor's mounting: what a person measured wins over the frame's standard. Kept per motor object. */
export function motorDimensions(_motor: Motor): FrameDimensions {
  throw new Error('not yet written');
}
