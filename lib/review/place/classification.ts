import { areaClassification } from '@/lib/matching/criteria/surroundings/area-classification';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';

/**
 * Is the motor's area mark lower than its place asks, missing, or void as it is fed? Only what is certain is raised: that a
 * mark covers its place is a competent person's to say, of every motor. Not asked where no class is stated.
 */
export function classification({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const found = areaClassification(set, motor, context);
  if (found?.grade !== 'block') return null;
  const { have, need, unit, says, cite } = found;
  return raised({
    ...{ rule: 'classification', urgency: 'at-once', have, need, unit, cite },
    says: `${says} A competent person decides what becomes of it.`,
    figures: { driveDuty: motor.driveDuty, start: set.supply.start, kind: context.row.kind },
  });
}
