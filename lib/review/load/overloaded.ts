import { power } from '@/lib/matching/criteria/load/power';
import { carriesLoad } from '@/lib/matching/torque/carries-load';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import { loadSum } from '../load-sum';
import { isByDerating, loadedShare, NEARLY } from '../loaded-share';
import type { ReviewCase } from '../review-case';

/**
 * Is the motor asked for more than it is rated for, its service factor used up? In kW at its shaft, against the rating the
 * surroundings leave. What only heat, height or unbalance make too much is told by `derated`; what a drive-fed motor
 * lacks in torque by `drive-torque`. Not asked while load or rating is unknown.
 */
export function overloaded(asked: ReviewCase): ReviewFinding | null {
  const { set, motor, context } = asked;
  const share = loadedShare(asked);
  const sum = loadSum(asked);
  if (share === null || sum === null || share.isWithin || isByDerating(share)) return null;
  const found = power(set, motor, context);
  if (found === null || (found.grade !== 'block' && !(found.grade === 'check' && share.ofLeft <= NEARLY))) return null;
  if (set.supply.start === 'drive' && isTold(carriesLoad(set, motor, context)?.grade)) return null;

  const isNear = found.grade === 'check';
  const pct = figure(100 * share.ofLeft, 0);
  return raised({
    rule: 'overloaded',
    urgency: isNear ? 'look' : 'at-once',
    have: share.leftKw,
    need: sum.motorKw,
    unit: 'kW',
    says: isNear
      ? `${sum.says}: ${figure(100 * share.ofLeft, 1)} % of the ${figure(share.leftKw)} kW it is rated for. A plate and a pump curve do not tell that from full load.`
      : `${sum.says}: ${pct} % of the ${figure(share.leftKw)} kW it is rated for${factorSays(asked, share.ofLeft)}.`,
    cite: found.cite,
    reading: isNear ? 'Input power, or amps and volts of all three lines, at full duty (15 min)' : null,
    figures: { shaftKw: set.load.shaftKw, kw: context.row.kw, factor: context.derating.factor },
  });
}

/** What becomes of the service factor, after the share of the rating. */
function factorSays({ context }: ReviewCase, share: number): string {
  const { row } = context;
  if (row.serviceFactor <= 1) return '';
  return share > row.serviceFactor
    ? `, and beyond its service factor of ${figure(row.serviceFactor)}`
    : `: its service factor of ${figure(row.serviceFactor)} may not be leaned on here`;
}

const isTold = (grade: string | undefined) => grade === 'block' || grade === 'check';
