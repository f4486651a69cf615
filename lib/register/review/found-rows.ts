import type { ReviewRow } from '@/lib/review/list/row';
import type { KeptReview } from './kept-review';

/** Every finding of a site as a row. */
export function foundRows({ sets }: Pick<KeptReview, 'sets'>): ReviewRow[] {
  return [...sets.values()].flatMap(({ kept, standing, findings }) => {
    if (standing === null) return [];
    const { setId, tag, service, areaId, area, criticality } = kept;
    const head = { setId, tag, service, areaId, area, criticality, motor: standing.asked.motor.id };
    const { loadPct } = standing;
    return findings.map((finding) => ({ ...head, loadPct, finding, isAccepted: false }));
  });
}
