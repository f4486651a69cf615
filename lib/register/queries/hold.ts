import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { type LeastCover, leastCover } from '@/lib/solver/least-cover';
import { type FailureRate, meanRate, rateAfter, rateOfPrior } from '@/lib/spares/demand/failure-rate';
import { type Stock, stock } from '@/lib/spares/demand/stock';
import { buyCandidates } from '@/lib/spares/hold/buy-candidates';
import type { HoldCandidate, Offered } from '@/lib/spares/hold/candidate';
import { type Choice, choiceOf } from '@/lib/spares/hold/choice';
import { type Held, heldOf } from '@/lib/spares/hold/held';
import { servingOf } from '@/lib/spares/hold/served';
import { shelfCandidates } from '@/lib/spares/hold/shelf-candidates';
import { type PublishedRate, publishedRates } from '@/lib/standards/published-rates';
import { isAskedSet } from '../cover-filter';
import type { HoldAsked } from '../hold-asked';
import type { KeptSet } from '../kept-plant/kept-plant';
import { plantNow } from '../kept-plant/plant-now';
import { today } from '../today';

/** As many sets as one choice is made for: each asks for every standard rating that could be bought. */
const MOST_SETS = 1_000;

export interface HeldLine {
  held: Held;
  candidate: HoldCandidate;
  offered: Offered;
  sets: KeptSet[];
  /** How many to hold; null: nobody told in how many days a used one is made good. */
  stock: Stock | null;
}

export interface HoldAnswer {
  sets: KeptSet[];
  /** Sets that nothing of what may be chosen could serve. */
  unservable: { of: KeptSet; because: Choice['unservable'][number]['because'] }[];
  lines: HeldLine[];
  /** The motors of the greedy choice, for comparison. */
  greedy: { cost: number; motors: number };
  found: LeastCover | null;
  fixedCents: number;
  rate: { published: PublishedRate; prior: FailureRate; after: FailureRate; seen: { failures: number; years: number } };
  settings: SiteSettings;
}

/** What is wrong with a figure of the question, by its name there. */
interface HoldProblem {
  path: string;
  says: string;
}

type HoldOutcome = { outcome: 'chosen'; answer: HoldAnswer } | { outcome: 'refused'; problems: HoldProblem[] };

/** Which motors to hold for the sets asked, as few or as cheap as can be proven within the time, and how many of each. */
export async function hold(actor: Actor, asked: HoldAsked): Promise<HoldOutcome> {
  must(actor, 'register.read');
  const plant = await plantNow(actor);
  const { settings } = plant;
  const tags = new Set(asked.sets.tags);
  const sets = [...plant.sets.values()]
    .filter((of) => (tags.size === 0 ? isAskedSet(of, asked.sets) : tags.has(of.tag)))
    .sort((a, b) => (a.criticality ?? 5) - (b.criticality ?? 5) || (a.tag < b.tag ? -1 : 1));
  const published = publishedRates(settings.hoursPerYear).find(({ id }) => id === asked.rate) ?? null;
  const problems = problemsOf(asked, sets.length, published);
  if (published === null || problems.length > 0) return { outcome: 'refused', problems };

  const asOf = today(plant.timezone);
  const shelf = [...plant.motors.values()].flatMap(({ place, motor }) => (place === 'on-shelf' ? [motor] : []));
  const candidates = [...shelfCandidates(shelf, asOf), ...buyCandidates(sets.map(({ set }) => set))];
  const offered = candidates.map((candidate) => offeredOf(candidate, asked, settings));
  const serving = servingOf(candidates, { settings, asOf });
  const served = sets.map(({ set }) => serving(set));

  const prior = rateOfPrior(published.perYear, asked.priorYears);
  const seen = await seenAt(actor, sets);
  const after = rateAfter(prior, seen);
  const choice = choiceOf({ candidates, offered, served }, asked.options, meanRate(after));
  const found = choice.programme.rowCount === 0 ? null : await leastCover(choice.programme, asked.seconds);
  const lines = found === null ? [] : heldOf(choice, found.columns);
  const greedy = found === null ? [] : heldOf(choice, found.greedy.columns);
  return {
    outcome: 'chosen',
    answer: {
      ...{ sets, settings, found, fixedCents: choice.fixedCents, rate: { published, prior, after, seen } },
      unservable: choice.unservable.map(({ set, because }) => ({ of: sets[set] as KeptSet, because })),
      greedy: { cost: found === null ? 0 : found.greedy.cost, motors: greedy.length },
      lines: lines.map((held): HeldLine => {
        const candidate = candidates[held.candidate] as HoldCandidate;
        const own = offered[held.candidate] as Offered;
        const days = asked.days ?? (candidate.from === 'shelf' ? settings.repairDays : own.leadDays);
        const isCounted = days !== null && held.sets.length > 0;
        const asks = { rate: after, sets: held.sets.length, chance: asked.chance, law: 'uncertain' } as const;
        return {
          ...{ held, candidate, offered: own, sets: held.sets.map(({ set }) => sets[set] as KeptSet) },
          stock: isCounted ? stock({ ...asks, days }) : null,
        };
      }),
    },
  };
}

function problemsOf({ options, price, rate }: HoldAsked, sets: number, published: PublishedRate | null): HoldProblem[] {
  const problems: HoldProblem[] = [];
  const add = (path: string, says: string) => problems.push({ path, says });
  if (sets === 0) add('q', 'No set is like this.');
  if (sets > MOST_SETS)
    add('q', `${sets} sets are asked for, and a choice is made for at most ${MOST_SETS}: choose fewer.`);
  if (published === null) add('rate', `There is no published rate “${rate}”.`);
  if (options.aim !== 'fewest' && options.from !== 'shelf' && (price.each === null || price.perKw === null))
    add('each', 'To choose by cost tell what a motor costs: so much each, and so much for each kW.');
  if (options.aim === 'cheapest-with-work' && options.perHour === null)
    add('perHour', 'To count work tell what an hour of it costs, here or in the site’s settings.');
  return problems;
}

/** What buying it is taken to cost, and the site's days of delivery; an own build is made to order. */
function offeredOf(
  { from, motor, rating }: HoldCandidate,
  { price, days }: HoldAsked,
  settings: SiteSettings,
): Offered {
  if (from === 'shelf') return { price: null, leadDays: 0 };
  const kw = motor.ratings[0]?.kw ?? null;
  const told = price.each === null || price.perKw === null || kw === null ? null : price.each + price.perKw * kw;
  const isPlain = rating !== null && rating.build === 'plain';
  return { price: told, leadDays: days ?? (isPlain ? settings.deliveryDays : settings.specialDeliveryDays) };
}

const YEAR_MS = 365 * 86_400_000;

/** The faults told of these sets, and for how long they have been in the register, in years of one set. */
async function seenAt({ siteId }: Actor, sets: readonly KeptSet[]): Promise<{ failures: number; years: number }> {
  const id = { in: sets.map(({ setId }) => setId) };
  const [failures, rows] = await Promise.all([
    db.fault.count({ where: { siteId, setId: id } }),
    db.pumpSet.findMany({ where: { siteId, id }, select: { createdAt: true } }),
  ]);
  const now = Date.now();
  return { failures, years: rows.reduce((sum, { createdAt }) => sum + (now - createdAt.getTime()) / YEAR_MS, 0) };
}
