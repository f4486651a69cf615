import type { Result } from '@/lib/matching/assess';
import { isSameSize } from '@/lib/matching/buy/is-same-size';
import { leastKwOf } from '@/lib/matching/buy/least-kw';
import { motorAskedFor } from '@/lib/matching/buy/motor-asked-for';
import { type RatingAsked, ratingsAskedFor } from '@/lib/matching/buy/ratings-asked-for';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import type { DemandGroup } from '../demand';
import { specification } from '../specification';
import { type Contradiction, shared } from './contradiction';
import { oneForAll } from './one-for-all';

/** How the judgement takes the motor asked for in one of the sets. */
export interface Served {
  tag: string;
  result: Result;
}

/** One rating that could be bought for the group. */
export interface PurchaseOption {
  /** As the judgement has it; its `id` names the rating. */
  motor: Motor;
  contradictions: readonly Contradiction[];
  served: readonly Served[];
}

export interface GroupPurchase {
  /** Those that serve the most sets first, of equals the smallest. */
  options: readonly PurchaseOption[];
  /** Sets for which no standard rating answers: single-phase, other hertz, or poles or power that nobody told. */
  unanswered: readonly string[];
}

/** One motor for all the sets, on each standard rating that one of them could be bought. `asOf`: YYYY-MM-DD. */
export function groupPurchase(sets: readonly PumpSet[], settings: SiteSettings, asOf: string): GroupPurchase {
  const asking = sets.map((set) => ({ set, ratings: ratingsAskedFor(set) }));
  const unanswered = asking.filter(({ ratings }) => ratings.length === 0).map(({ set }) => set.tag);
  const answered = asking.filter(({ ratings }) => ratings.length > 0);
  const ratings = new Map(answered.flatMap(({ ratings }) => ratings.map((one) => [keyOf(one), one] as const)));
  const options = [...ratings.values()].map((asked): PurchaseOption => {
    const some = answered.map(({ set }) => set);
    const { motor, contradictions } = oneForAll(some, asked);
    const noted = [...polesNoted(answered, asked), ...contradictions];
    return { motor, contradictions: noted, served: sets.map((set) => judged(motor, set, settings, asOf)) };
  });
  return { options: options.sort(byServed), unanswered };
}

/** The specification of one option: each set beside it with what it would ask for alone. */
export function specificationOf(sets: readonly PumpSet[], { motor }: PurchaseOption, asOf: string): DemandGroup[] {
  const asking = sets.flatMap((set) => {
    const own = ownOf(set, motor);
    return own === null ? [] : [{ set, own }];
  });
  return specification(asking, motor, asOf);
}

/** What the set alone would ask for: the least standard rating that carries its load, of the option's system if it can. */
function ownOf(set: PumpSet, asked: Motor): Motor | null {
  const kw = leastKwOf(set);
  const enough = ratingsAskedFor(set).filter(
    ({ rating }) => kw === null || rating.kw >= kw * EXACTLY || isSameSize(rating.kw, kw),
  );
  const family = motorDimensions(asked).system;
  const own = enough.find(({ system }) => system === family) ?? enough[0];
  return own === undefined ? null : motorAskedFor(set, own.system, own.rating);
}

const EXACTLY = 1 - 1e-9;
const keyOf = ({ system, rating }: RatingAsked) => `${system} ${rating.kw} ${rating.poles}`;

const judged = (motor: Motor, set: PumpSet, settings: SiteSettings, asOf: string): Served => ({
  tag: set.tag,
  result: judgeAlone({ from: 'buy', motor }, set, settings, asOf),
});

/** Poles and family of frames are the rating's own: of several sets they may differ. */
function polesNoted(
  answered: readonly { set: PumpSet; ratings: readonly RatingAsked[] }[],
  { system, rating }: RatingAsked,
): Contradiction[] {
  const noted: Contradiction[] = [];
  const told = <T>(of: (one: RatingAsked) => T, own: T) =>
    answered.map(({ set, ratings }) => {
      const can = ratings.map(of);
      return { tag: set.tag, value: can.includes(own) ? own : (can[0] ?? null) };
    });
  shared(
    told((one) => one.rating.poles, rating.poles),
    { id: 'poles', label: 'Poles' },
    String,
    noted,
  );
  shared(
    told((one) => one.system, system),
    { id: 'frame', label: 'Family of frames' },
    String,
    noted,
  );
  // It is asked as this rating has it, whatever most have.
  const own: Record<string, string> = { poles: String(rating.poles), frame: system };
  return noted.map((one) => ({ ...one, askedAs: own[one.id] ?? one.askedAs }));
}

const RANK = { 'straight-swap': 3, 'swap-with-work': 2, 'check-first': 1, unsuitable: 0 } as const;
const servesOf = ({ served }: PurchaseOption) => served.filter(({ result }) => RANK[result.verdict] > 0).length;
const rankOf = ({ served }: PurchaseOption) => served.reduce((sum, { result }) => sum + RANK[result.verdict], 0);
const kwOf = ({ motor }: PurchaseOption) => motor.ratings[0]?.kw ?? 0;

const byServed = (a: PurchaseOption, b: PurchaseOption) =>
  servesOf(b) - servesOf(a) || rankOf(b) - rankOf(a) || kwOf(a) - kwOf(b) || (a.motor.id < b.motor.id ? -1 : 1);
