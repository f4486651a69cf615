import { carriesLoad } from '@/lib/matching/torque/carries-load';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';
import { urgencyOf } from '../urgency-of';

/**
 * On a drive: has the motor the torque at every speed asked, where its own fan cools less and above base frequency the
 * field is weak? In N·m at its shaft. Not asked on the mains, nor while the load is unknown.
 */
export function driveTorque({ set, motor, context }: ReviewCase): ReviewFinding | null {
  if (set.supply.start !== 'drive') return null;
  const found = carriesLoad(set, motor, context);
  const urgency = found === null ? null : urgencyOf(found);
  if (found === null || urgency === null) return null;
  const { drive } = set.supply;
  const short =
    typeof found.have === 'number' && typeof found.need === 'number'
      ? `${figure(found.need)} N·m asked, ${figure(found.have)} N·m there. `
      : '';
  return raised({
    rule: 'drive-torque',
    urgency,
    have: found.have,
    need: found.need,
    unit: found.unit,
    says: `${short}${found.says}`,
    cite: found.cite,
    reading: found.reading,
    figures: {
      ...{ shaftKw: set.load.shaftKw, kw: context.row.kw, rpm: context.row.rpm },
      ...{ minHertz: drive?.minHertz ?? null, maxHertz: drive?.maxHertz ?? null },
    },
  });
}
