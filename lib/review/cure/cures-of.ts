import { buyable } from '@/lib/matching/buy/buyable';
import type { Placed } from '@/lib/matching/order';
import { kindsOf, type MotorKind } from '@/lib/matching/screen/kinds';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { ReviewFinding, ReviewRuleId } from '../finding';
import { caseOf, type ReviewCase } from '../review-case';
import type { ReviewRule } from '../rule';
import { reviewRules } from '../rules';
import { bestMotor, type Found } from './best-motor';
import type { Cure, Cured } from './cure';
import { isNoWorse, isPutRight } from './is-put-right';
import { WAYS } from './ways';
import { whyNone } from './why-none';

/** The motors on the site's shelves that a screen lets through for a set, gathered in kinds. */
export type ShelfFor = (set: PumpSet) => readonly MotorKind[];

/**
 * What would put a finding right: work at the set, the best motor on a shelf, the best standard rating to buy, each judged
 * again with the engine and asked the same question. A finding that a reading decides asks for the reading alone.
 */
export function curesOf(asked: ReviewCase, finding: ReviewFinding, shelf: ShelfFor): Cured {
  if (finding.urgency === 'look' && finding.reading !== null)
    return { cures: [{ kind: 'look', reading: finding.reading }], why: null };
  const rule = RULES.get(finding.rule);
  if (rule === undefined) throw new Error(`no rule ${finding.rule}`);
  const { byWork, byMotor } = WAYS[finding.rule];
  const change = byWork
    .flatMap((way) => way(asked, rule))
    .find(({ set }) => {
      const after = caseOf(set, asked.motor, asked.by);
      return isPutRight(asked, rule, after) && isNoWorse(asked, after);
    });
  const find = (kinds: readonly MotorKind[]): Found =>
    byMotor === null ? { best: null, miss: null } : bestMotor(asked, rule, byMotor, kinds);
  const onShelf = find(shelf(asked.set));
  const toBuy = find(kindsOf(buyable(asked.set)));
  const cures: Cure[] = [
    ...(change === undefined ? [] : [{ kind: 'work' as const, what: change.what, hours: change.hours }]),
    ...(onShelf.best === null ? [] : [byThat('shelf', onShelf.best, asked)]),
    ...(toBuy.best === null ? [] : [byThat('buy', toBuy.best, asked)]),
  ];
  return { cures, why: cures.length === 0 ? whyNone(asked, finding, toBuy.miss ?? onShelf.miss) : null };
}

const RULES = new Map<ReviewRuleId, ReviewRule>(reviewRules);

function byThat(kind: 'shelf' | 'buy', { candidate, verdict, hours }: Placed, { set, by }: ReviewCase): Cure {
  const { point } = caseOf(set, candidate, by).context;
  const { loadPct, torquePct } = point.restored ?? point;
  const isOnDrive = set.supply.start === 'drive';
  const pct = isOnDrive ? torquePct : loadPct;
  const runs = pct === null ? null : `loaded to ${figure(pct, 0)} %${isOnDrive ? ' of its torque' : ''}`;
  return { kind, motor: candidate.id, verdict, hours, runs };
}
