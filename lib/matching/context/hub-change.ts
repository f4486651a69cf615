import type { PumpSet } from '@/lib/plant/set';
import type { FrameDimensions } from '@/lib/standards/dimension';
import type { Seat } from './seat';

/** What happens to the hub (or quill) for this candidate's shaft. */
export interface HubChange {
  kind: 'none' | 'bushing' | 'sleeve' | 'rebore' | 'new-hub' | 'quill-bushing' | 'impossible' | 'unknown' | 'not-asked';
}

export function hubChangeOf(_set: PumpSet, _fit: FrameDimensions, _seat: Seat): HubChange {
  throw new Error('not yet written');
}
