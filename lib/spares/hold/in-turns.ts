import { buyable } from '@/lib/matching/buy/buyable';
import type { JudgedBy } from '@/lib/matching/context';
import type { PumpSet } from '@/lib/plant/set';
import { gatherBuyable } from './buy-candidates';
import type { HoldCandidate } from './candidate';
import { type Served, serverOf } from './served';

/** To be awaited between pieces of work: others may have their turn then. */
export type Turn = () => Promise<void>;

/** `buyCandidates`, a set at a time with a turn for others behind each: some tens of ratings are worked out for one. */
export async function buyCandidatesInTurns(sets: readonly PumpSet[], turn: Turn): Promise<HoldCandidate[]> {
  return gatherBuyable(await eachInTurns(sets, (set) => ({ tag: set.tag, motors: buyable(set) }), turn));
}

/** For each set the candidates that could go in, with a turn for others behind each candidate and each set. */
export async function servedInTurns(
  sets: readonly PumpSet[],
  candidates: readonly HoldCandidate[],
  judgedBy: JudgedBy,
  turn: Turn,
): Promise<Served[][]> {
  const { placed, serving } = serverOf(judgedBy);
  return eachInTurns(sets, serving(await eachInTurns(candidates, placed, turn)), turn);
}

async function eachInTurns<Of, To>(all: readonly Of[], work: (one: Of, at: number) => To, turn: Turn): Promise<To[]> {
  const done: To[] = [];
  for (const [at, one] of all.entries()) {
    done.push(work(one, at));
    await turn();
  }
  return done;
}
