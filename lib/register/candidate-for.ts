import type { Actor } from '@/lib/auth/may';
import { buyable } from '@/lib/matching/buy/buyable';
import type { Candidate, Unoffered } from '@/lib/matching/offer/candidate';
import { type KnownMotor, motorByNumber } from './queries/motor-by-number';
import type { KnownSet } from './queries/set-by-tag';
import { spareSets } from './queries/spare-sets';

export interface CandidateHere {
  candidate: Candidate;
  /** The register's row; null: it would have to be bought. */
  known: KnownMotor | null;
  unoffered: Unoffered | null;
}

/** One motor as a candidate for a set: of the register, else a rating that could be bought; null: neither. */
export async function candidateFor(actor: Actor, { row, set }: KnownSet, id: string): Promise<CandidateHere | null> {
  const known = await motorByNumber(actor, id);
  if (known === null) {
    const motor = buyable(set).find((one) => one.id === id);
    return motor === undefined ? null : { candidate: { from: 'buy', motor }, known: null, unoffered: null };
  }
  const { motor, whereabouts } = known;
  const { condition, rewinds } = known.row;
  const here: Candidate = { from: 'shelf', motor, at: whereabouts, condition, rewinds };
  switch (whereabouts.place) {
    case 'on-shelf':
    case 'on-order':
      return { candidate: here, known, unoffered: null };
    case 'at-repair':
    case 'scrapped':
      return { candidate: here, known, unoffered: whereabouts.place };
    case 'in-set': {
      if (whereabouts.setTag === row.tag) return { candidate: here, known, unoffered: 'in-this-set' };
      const spared = (await spareSets(actor, row.id)).find((one) => one.motor.id === motor.id);
      if (spared === undefined) return { candidate: here, known, unoffered: 'in-critical-set' };
      return { candidate: { from: 'set', motor, stops: spared.stops }, known, unoffered: null };
    }
  }
}
