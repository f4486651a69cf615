import { buyable } from '@/lib/matching/buy/buyable';
import type { PumpSet } from '@/lib/plant/set';
import type { DemandGroup } from '@/lib/purchase/demand';

/** The first motor that could be bought for it. */
export function firstToBuy(one: PumpSet) {
  const [asked] = buyable(one);
  if (asked === undefined) throw new Error('nothing could be bought');
  return asked;
}

/** Each line's value, or another part of it, by the line's id. */
export const byId = (groups: readonly DemandGroup[]) =>
  Object.fromEntries(groups.flatMap(({ demands }) => demands.map((demand) => [demand.id, demand])));
