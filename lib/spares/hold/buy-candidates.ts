import { buyable } from '@/lib/matching/buy/buyable';
import { kindsOf } from '@/lib/matching/screen/kinds';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Build, HoldCandidate, RatingKey } from './candidate';

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
    rating: ratingKeyOf(one),
    askedFor: [...new Set(members.map((motor) => tagOf.get(motor) as string))],
  }));
}

/** Its place in a price list; null where more than one thing besides the rating makes its price. */
export function ratingKeyOf(motor: Motor): RatingKey | null {
  const [row] = motor.ratings;
  const builds = buildsOf(motor);
  if (row === undefined || motor.poles === null || builds.length > 1) return null;
  const [build = 'plain'] = builds;
  const { poles } = motor;
  if (row.hp !== null) return { system: 'NEMA', power: row.hp, poles, build };
  return row.kw === null ? null : { system: 'IEC', power: row.kw, poles, build };
}

function buildsOf({ washdown, classification, brake, has }: Motor): Build[] {
  const builds: Build[] = [];
  if (washdown !== null && washdown !== 'none') builds.push('washdown');
  if (classification !== null) builds.push('area');
  if (has?.includes('brake') || brake.torqueNm !== null || brake.volts !== null) builds.push('brake');
  return builds;
}
