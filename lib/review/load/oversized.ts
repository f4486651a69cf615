import { loading } from '@/lib/matching/criteria/load/loading';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import { loadSum } from '../load-sum';
import { partLoadCost } from '../part-load-cost';
import type { ReviewCase } from '../review-case';

/**
 * Is the motor far too large for the duty: under 40 % of its rated power, on a drive of its rated torque? Not asked while
 * the load is unknown. What it costs is what its efficiency loses at that load.
 */
export function oversized(asked: ReviewCase): ReviewFinding | null {
  const { set, motor, context } = asked;
  const found = loading(set, motor, context);
  const sum = loadSum(asked);
  if (found?.grade !== 'note' || sum === null || typeof found.have !== 'number') return null;
  const { row } = context;
  const isByTorque = set.supply.start === 'drive';
  return raised({
    rule: 'oversized',
    urgency: 'next-time',
    have: found.have,
    need: found.need,
    unit: '%',
    says: `${sum.says}: ${figure(found.have, 0)} % of ${isByTorque ? 'its rated torque' : `${figure(row.kw as number)} kW`}.`,
    cite: found.cite,
    cost: partLoadCost(asked),
    figures: { shaftKw: set.load.shaftKw, kw: row.kw },
  });
}
