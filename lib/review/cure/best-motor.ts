import { judge } from '@/lib/matching/assess';
import { failedRowOf } from '@/lib/matching/context/driven-load';
import type { CriterionId, Finding } from '@/lib/matching/finding';
import { inOrder, type Judged, type Placed } from '@/lib/matching/order';
import type { MotorKind } from '@/lib/matching/screen/kinds';
import { caseOf, type ReviewCase } from '../review-case';
import type { ReviewRule } from '../rule';
import { isPutRight } from './is-put-right';

/** What must be answered of a motor that is to put it right: unknown is never a cure. */
export interface Proof {
  /** Answered, and fit as it is or after work. */
  answered: readonly CriterionId[];
  /** The same, where the set asks it at all. */
  ifAsked?: readonly CriterionId[];
  /** Of these the best answer is a person's check. */
  mayBeChecked?: readonly CriterionId[];
}

export interface Found {
  /** Null: none puts it right. */
  best: Placed | null;
  /** Of those that would put it right and do not go in, the one that least stands against; null: none would. */
  miss: Miss | null;
}

export interface Miss {
  motor: string;
  blocks: readonly Finding[];
}

/**
 * The best of these motors that puts it right: one that the engine does not refuse, of which the rule raises nothing, and
 * of which the engine answers what the rule rests on.
 */
export function bestMotor(asked: ReviewCase, rule: ReviewRule, proof: Proof, kinds: readonly MotorKind[]): Found {
  const { set, by } = asked;
  const fit: Judged[] = [];
  let miss: Miss | null = null;
  for (const { one, members } of kinds) {
    if (!isPutRight(asked, rule, caseOf(set, one, by))) continue;
    const first = judge(set, one, by);
    const blocks = first.findings.filter(({ grade }) => grade === 'block');
    if (blocks.length > 0) {
      if (miss === null || blocks.length < miss.blocks.length) miss = { motor: one.id, blocks };
      continue;
    }
    if (!isProven(first.findings, proof)) continue;
    for (const motor of members) {
      const judged = motor === one ? first : judge(set, motor, by);
      if (judged.verdict !== 'unsuitable') fit.push({ ...judged, whereabouts: null });
    }
  }
  const wantedKw = failedRowOf(set)?.kw ?? set.load.shaftKw;
  return { best: inOrder(fit, wantedKw)[0] ?? null, miss };
}

function isProven(findings: readonly Finding[], { answered, ifAsked = [], mayBeChecked = [] }: Proof): boolean {
  const isFit = ({ grade, criterion }: Finding) =>
    grade === 'ok' || grade === 'note' || grade === 'work' || (grade === 'check' && mayBeChecked.includes(criterion));
  const of = (id: CriterionId) => findings.find(({ criterion }) => criterion === id);
  const isAnswered = (id: CriterionId, unasked: boolean) => {
    const found = of(id);
    return found === undefined ? unasked : isFit(found);
  };
  return answered.every((id) => isAnswered(id, false)) && ifAsked.every((id) => isAnswered(id, true));
}
