import { drivenLoadOf } from '@/lib/matching/context/driven-load';
import type { CriterionId } from '@/lib/matching/finding';
import type { ReviewFinding } from '../finding';
import type { ReviewCase } from '../review-case';
import type { Miss } from './best-motor';

/** Why nothing is offered, and what stands against the nearest that would put it right. */
export function whyNone({ set }: ReviewCase, { rule }: ReviewFinding, miss: Miss | null): string {
  const { maxPumpRpm } = set.load;
  const { pumpRpm } = drivenLoadOf(set);
  if (rule === 'speed' && maxPumpRpm !== null && pumpRpm !== null && pumpRpm > maxPumpRpm)
    return 'The speed told of the pump is above its own maximum: one of the two must be put right first.';
  if (rule === 'single-phase' && set.supply.phases === 1)
    return 'A three-phase motor needs three phases brought to the set, or a drive that makes them of one.';
  if (miss === null)
    return 'No motor on a shelf and no standard rating would put it right as the set is told: a competent person looks at it.';
  const against = miss.blocks.map(({ says }) => says).join(' ');
  const needed = rule === 'oversized' && miss.blocks.some(({ criterion }) => FOR_SIZE.has(criterion));
  return `${needed ? 'The pump needs its size. ' : ''}The nearest, ${miss.motor}, does not go in: ${against}`;
}

/** What only a larger motor answers. */
const FOR_SIZE: ReadonlySet<CriterionId> = new Set<CriterionId>(['power', 'torque', 'breakaway']);
