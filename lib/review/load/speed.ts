import { speed as speedCriterion } from '@/lib/matching/criteria/load/speed';
import { limitHertz } from '@/lib/matching/speed/limit-hertz';
import type { Motor } from '@/lib/plant/motor';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';

/**
 * Does the pump turn as fast as it should, and no faster than it may? In rpm of the pump where it can be told, else of the
 * motor; a drive's upper limit in Hz. What the motor itself may turn at on a drive is asked by `drive-duty`.
 */
export function speed({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const ofPump = set.supply.start === 'drive' && motor.maxRpm !== null ? withoutLimit(motor) : motor;
  const found = speedCriterion(set, ofPump, context);
  if (found === null || (found.grade !== 'block' && found.grade !== 'work')) return null;
  const { maxPumpRpm, atPumpRpm } = set.load;
  const maxHertz = set.supply.drive?.maxHertz ?? null;
  const about = {
    rule: 'speed',
    cite: found.cite,
    figures: { maxPumpRpm, atPumpRpm, maxHertz, ratio: set.coupling.ratio, rpm: context.row.rpm },
  } as const;
  const hertz = found.grade === 'work' ? limitHertz(set, ofPump, context.row) : null;
  if (hertz !== null && maxHertz !== null && maxPumpRpm !== null)
    return raised({
      ...about,
      ...{ urgency: 'plan', have: maxHertz, need: hertz, unit: 'Hz' },
      says: `The drive may go up to ${figure(maxHertz, 1)} Hz. The pump’s ${figure(maxPumpRpm, 0)} rpm are reached at ${figure(hertz, 1)} Hz: above that it runs too fast.`,
    });
  const isLimit = found.need === maxPumpRpm || found.need === motor.maxRpm;
  const isTooFast =
    isLimit && typeof found.have === 'number' && typeof found.need === 'number' && found.have > found.need;
  const turns =
    typeof found.have === 'number' && typeof found.need === 'number'
      ? `${figure(found.have, 0)} rpm against ${figure(found.need, 0)} rpm${isTooFast ? ', the most there may be' : ' asked'}. `
      : '';
  return raised({
    ...about,
    ...{ urgency: isTooFast ? 'at-once' : 'plan', have: found.have, need: found.need, unit: found.unit },
    says: `${turns}${found.says}`,
  });
}

/** Kept per motor, so that what was worked out for it once need not be again. */
const withoutLimits = new WeakMap<Motor, Motor>();
function withoutLimit(motor: Motor): Motor {
  const known = withoutLimits.get(motor);
  if (known !== undefined) return known;
  const made = { ...motor, maxRpm: null };
  withoutLimits.set(motor, made);
  return made;
}
