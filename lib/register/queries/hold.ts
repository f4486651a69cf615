import { type Actor, must } from '@/lib/auth/may';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { type LeastCover, leastCover } from '@/lib/solver/least-cover';
import { type FailureRate, meanRate, rateAfter, rateOfPrior } from '@/lib/spares/demand/failure-rate';
import { type Stock, stock } from '@/lib/spares/demand/stock';
import type { HoldCandidate, Offered } from '@/lib/spares/hold/candidate';
import { type Choice, choiceOf } from '@/lib/spares/hold/choice';
import { type Held, heldOf } from '@/lib/spares/hold/held';
import { buyCandidatesInTurns, servedInTurns } from '@/lib/spares/hold/in-turns';
import type { ListedPrice } from '@/lib/spares/hold/price-list';
import { shelfCandidates } from '@/lib/spares/hold/shelf-candidates';
import { type PublishedRate, publishedRates } from '@/lib/standards/published-rates';
import { faultsSeen } from '../faults-seen';
import type { HoldAsked, HoldProblem } from '../hold-asked';
import { idleLines, offeredOf } from '../hold-offered';
import type { KeptSet } from '../kept-plant/kept-plant';
import { plantNow } from '../kept-plant/plant-now';
import { turns } from '../next-turn';
import { type SetsTakingPart, setsTakingPart } from '../sets-taking-part';
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
  /** Lines of the price list that price nothing. */
  idle: ListedPrice[];
  rate: { published: PublishedRate; prior: FailureRate; after: FailureRate; seen: { failures: number; years: number } };
  settings: SiteSettings;
}

export type HoldOutcome = { toHold: SetsTakingPart } & (
  | { outcome: 'chosen'; answer: HoldAnswer }
  | { outcome: 'refused'; problems: readonly HoldProblem[] }
  | { outcome: 'no-sets' }
);

/** Which motors to hold for the sets asked, as few or as cheap as can be proven within the time, and how many of each. */
export async function hold(actor: Actor, asked: HoldAsked): Promise<HoldOutcome> {
  must(actor, 'register.read');
  const plant = await plantNow(actor);
  const { settings } = plant;
  const toHold = setsTakingPart(plant, asked);
  const { taking: sets } = toHold;
  if (sets.length === 0) return { outcome: 'no-sets', toHold };
  const published = publishedRates(settings.hoursPerYear).find(({ id }) => id === asked.rate) ?? null;
  const problems = problemsOf(asked, sets.length, published);
  if (published === null || problems.length > 0) return { outcome: 'refused', toHold, problems };

  const asOf = today(plant.timezone);
  const shelf = [...plant.motors.values()].flatMap(({ place, motor }) => (place === 'on-shelf' ? [motor] : []));
  const turn = turns();
  const judged = sets.map(({ set }) => set);
  const candidates = [...shelfCandidates(shelf, asOf), ...(await buyCandidatesInTurns(judged, turn))];
  const offered = candidates.map((candidate) => offeredOf(candidate, asked, settings));
  const served = await servedInTurns(judged, candidates, { settings, asOf }, turn);

  const prior = rateOfPrior(published.perYear, asked.priorYears);
  const seen = await faultsSeen(actor, sets);
  const after = rateAfter(prior, seen);
  await turn();
  const choice = choiceOf({ candidates, offered, served }, asked.options, meanRate(after));
  await turn();
  const found = choice.programme.rowCount === 0 ? null : await leastCover(choice.programme, asked.seconds);
  const lines = found === null ? [] : heldOf(choice, found.columns, asked.options.aim);
  const greedy = found === null ? [] : heldOf(choice, found.greedy.columns, asked.options.aim);
  return {
    outcome: 'chosen',
    toHold,
    answer: {
      ...{
        sets,
        settings,
        found,
        idle: idleLines(asked.price.list, offered),
        fixedCents: choice.fixedCents,
        rate: { published, prior, after, seen },
      },
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

function problemsOf(
  { options, price, rate, unread }: HoldAsked,
  sets: number,
  published: PublishedRate | null,
): readonly HoldProblem[] {
  if (unread.length > 0) return unread;
  const problems: HoldProblem[] = [];
  const add = (path: string, says: string) => problems.push({ path, says });
  if (sets > MOST_SETS)
    add('q', `${sets} sets are asked for, and a choice is made for at most ${MOST_SETS}: choose fewer.`);
  if (published === null) add('rate', `There is no published rate “${rate}”.`);
  const isRule = price.each !== null && price.perKw !== null;
  if (options.aim !== 'fewest' && options.from !== 'shelf' && !isRule && price.list.length === 0)
    add('each', 'To choose by cost tell what a motor costs: so much each and so much for each kW, or a price list.');
  else if (!isRule && (price.each !== null || price.perKw !== null))
    add(
      price.each === null ? 'each' : 'perKw',
      'Tell both, so much each and so much for each kW: 0 where one of them is nothing.',
    );
  if (options.aim === 'cheapest-with-work' && options.perHour === null)
    add('perHour', 'To count work tell what an hour of it costs, here or in the site’s settings.');
  return problems;
}
