import { buyable } from '@/lib/matching/buy/buyable';
import { kindsOf } from '@/lib/matching/screen/kinds';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { HoldCandidate } from './candidate';

/** Every standard rating that could be bought for one of these sets, each as it would be asked, alike ones once. */
export function buyCandidates(sets: readonly PumpSet[]): HoldCandidate[] {
  return gatherBuyable(sets.map((set) => ({ tag: set.tag, motors: buyable(set) })));
}

/** The same from what was worked out set by set. */
export function gatherBuyable(asked: readonly { tag: string; motors: readonly Motor[] }[]): HoldCandidate[] {
  const tagOf = new Map<Motor, string>();
  for (const { tag, motors } of asked) for (const motor of motors) tagOf.set(motor, tag);
  return kindsOf([...tagOf.keys()]).map(({ one, members }) => ({
    from: 'buy',
    motor: one,
    numbers: [],
    askedFor: [...new Set(members.map((motor) => tagOf.get(motor) as string))],
  }));
}
