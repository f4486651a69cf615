import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { FrameDimensions } from '@/lib/standards/dimension';
import type { Seat } from './seat';

/** What happens to the base under this candidate. `stackMm` is what must lie under each foot; null unknown. */
export interface BaseChange {
  kind:
    | 'none'
    | 'shims'
    | 'ground-block'
    | 'slot-or-redrill'
    | 'transition-base'
    | 'impossible'
    | 'unknown'
    | 'not-asked';
  stackMm: number | null;
}

export function baseChangeOf(_set: PumpSet, _fit: FrameDimensions, _seat: Seat, _settings: SiteSettings): BaseChange {
  throw new Error('not yet written');
}
