import { breakaway } from '@/lib/matching/criteria/load/breakaway';
import { starting } from '@/lib/matching/criteria/supply/starting';
import type { Finding } from '@/lib/matching/finding';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';
import { urgencyOf } from '../urgency-of';

/**
 * Does the motor break its pump away, started as this set starts it, and does the starter suit its winding? N·m at the
 * motor's shaft. A motor that starts today and by this sum should not leans on what nobody has measured.
 */
export function start({ set, motor, context }: ReviewCase): ReviewFinding | null {
  // What the instantaneous trip stood so far it stands: of a motor that starts every day it is no question.
  const { instantaneousTripA } = set.supply;
  const untripped = instantaneousTripA === null ? set : { ...set, supply: { ...set.supply, instantaneousTripA: null } };
  const winding = starting(untripped, motor, context);
  if (winding?.grade === 'block') return told(winding, 'at-once', '');
  const found = breakaway(set, motor, context);
  const urgency = found === null ? null : urgencyOf(found, 'plan');
  return found === null || urgency === null ? null : told(found, urgency, sumOf(found));

  function told(answer: Finding, urgency: ReviewFinding['urgency'], sum: string): ReviewFinding {
    const { have, need, unit, says, cite, reading } = answer;
    return raised({
      ...{ rule: 'start', urgency, have, need, unit, cite, reading },
      says: `${by(set.supply.start)}${sum}${says}`,
      figures: {
        ...{ start: set.supply.start, shaftKw: set.load.shaftKw, breakawayPct: set.load.breakawayPct },
        ...{ kw: context.row.kw, rpm: context.row.rpm, design: motor.design, lockedRotorPct: motor.lockedRotorPct },
        capacitorKvar: set.supply.capacitorKvar,
      },
    });
  }
}

const BY = {
  direct: 'Started direct. ',
  'star-delta': 'Started in star. ',
  'part-winding': 'Started on part of its winding. ',
  soft: 'Started by a soft starter. ',
  drive: 'Started by a drive. ',
} as const;
const by = (start: keyof typeof BY | null) => (start === null ? '' : BY[start]);

/** Where the engine's sentence names both torques, nothing is to be added. */
const sumOf = ({ have, need, says }: Finding): string =>
  typeof have !== 'number' || typeof need !== 'number' || says.includes('N·m')
    ? ''
    : `${figure(have)} N·m against ${figure(need)} N·m. `;
