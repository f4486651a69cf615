import { power } from '@/lib/matching/criteria/load/power';
import { figure } from '@/lib/units/figure';
import { type ReviewFinding, raised } from '../finding';
import { loadSum } from '../load-sum';
import { isByDerating, loadedShare, NEARLY } from '../loaded-share';
import type { ReviewCase } from '../review-case';

/** Does the duty lean on the service factor all day? In kW. Not asked where it may not be leaned on at all. */
export function serviceFactor(asked: ReviewCase): ReviewFinding | null {
  const share = loadedShare(asked);
  const sum = loadSum(asked);
  if (share === null || sum === null || share.ofLeft <= NEARLY || isByDerating(share)) return null;
  const found = power(asked.set, asked.motor, asked.context);
  if (found?.grade !== 'check') return null;
  const { row } = asked.context;
  return raised({
    rule: 'service-factor',
    urgency: 'plan',
    have: share.leftKw,
    need: sum.motorKw,
    unit: 'kW',
    says: `${sum.says}: ${figure(100 * share.ofLeft, 0)} % of ${figure(share.leftKw)} kW, inside its service factor of ${figure(row.serviceFactor)} (${figure(share.leftKw * row.serviceFactor)} kW). It runs hotter and lasts less.`,
    cite: found.cite,
    figures: { shaftKw: asked.set.load.shaftKw, kw: row.kw, serviceFactor: row.serviceFactor },
  });
}
