import type { ChoiceOptions } from '@/lib/spares/hold/hold-options';
import type { ToldPrices } from '@/lib/spares/hold/price-of';
import type { CoverFilter } from './cover-filter';

/** What a person asks of the choice of motors to hold. Null: not told. */
export interface HoldAsked {
  sets: HoldFilter;
  /** Which of those sets take part. */
  ticks: HoldTicks;
  options: ChoiceOptions;
  price: ToldPrices;
  /** Days until a used motor is made good; null: the site's days of delivery. */
  days: number | null;
  /** Of published-rates. */
  rate: string;
  /** So many set-years the published rate counts as. */
  priorYears: number;
  /** The chance wanted that no set waits, from 0 to below 1. */
  chance: number;
  /** How long the solver may take. */
  seconds: number;
  /** What was typed and could not be read: nothing is chosen before it is put right. */
  unread: readonly HoldProblem[];
}

/** Which sets are asked for. Tags, where there are any, go before the rest. */
export type HoldFilter = Pick<CoverFilter, 'q' | 'areaId' | 'criticality'> & { tags: readonly string[] };

/** all, none; or those of a list that was shown with a box at each set: `shown` says which list (`shownAs`). */
export type HoldTicks = 'all' | 'none' | { shown: string; tags: readonly string[] };

/** What is wrong with a figure of the question, by its name there. */
export interface HoldProblem {
  path: string;
  says: string;
}
