import { enclosure as enclosureCriterion } from '@/lib/matching/criteria/surroundings/enclosure';
import { washdown } from '@/lib/matching/criteria/surroundings/washdown';
import { joined } from '@/lib/matching/joined';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';
import { urgencyOf } from '../urgency-of';

/** Does the motor keep out the dust and water of its place, and is it made to be hosed where the place is washed down? */
export function enclosure({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const found = joined(enclosureCriterion(set, motor), washdown(set, motor));
  const urgency = found === null ? null : urgencyOf(found, 'plan');
  if (found === null || urgency === null) return null;
  const { have, need, unit, says, cite, reading } = found;
  return raised({
    ...{ rule: 'enclosure', urgency, have, need, unit, says, cite, reading },
    figures: {
      ...{ ip: motor.ip, enclosure: motor.enclosure, washdown: motor.washdown, frame: context.fit.frame },
      ...{
        needIp: set.surroundings.ip,
        isWashed: set.surroundings.washdown === null ? null : String(set.surroundings.washdown),
      },
    },
  });
}
