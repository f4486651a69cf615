import type { CoverState } from '@/lib/spares/cover/set-standing';
import type { KeptSet } from './kept-plant/kept-plant';

export const COVER_SORTS = ['criticality', 'tag', 'area', 'motors'] as const;

/** Which sets of the cover are asked for, and in which order. */
export interface CoverFilter {
  q: string | null;
  areaId: string | null;
  /** 1 stops the plant ... 4 can wait. */
  criticality: number | null;
  state: CoverState | null;
  sort: (typeof COVER_SORTS)[number];
  isDown: boolean;
}

/** Every word stands somewhere in tag, service, pump or area; of a tag its letters and digits count. */
export function isAskedSet(
  { tag, service, pump, area, areaId, criticality }: KeptSet,
  filter: Pick<CoverFilter, 'q' | 'areaId' | 'criticality'>,
): boolean {
  if (filter.areaId !== null && areaId !== filter.areaId) return false;
  if (filter.criticality !== null && criticality !== filter.criticality) return false;
  if (filter.q === null) return true;
  const text = [tag, tag.replace(/[^\p{L}\p{N}]/gu, ''), service, pump, area].join(' ').toLowerCase();
  return filter.q
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** idle: it could go into no set; needed: used tonight it would leave a set with none. */
export const COVER_MOTOR_STATES = ['idle', 'needed'] as const;

/** Which shelf motors of the cover are asked for. */
export interface CoverMotorFilter {
  q: string | null;
  state: (typeof COVER_MOTOR_STATES)[number] | null;
}
