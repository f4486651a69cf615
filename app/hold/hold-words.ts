import type { AIMS } from '@/lib/spares/hold/hold-options';
import type { Refusal } from '@/lib/spares/hold/refusal';

export const AIM_WORDS = {
  fewest: 'fewest different motors',
  cheapest: 'least to pay for them',
  'cheapest-with-work': 'least to pay, work at the pumps counted',
} as const satisfies Record<(typeof AIMS)[number], string>;
export const SOURCE_WORDS = {
  both: 'shelf and what could be bought',
  shelf: 'shelf alone',
  buy: 'bought alone',
} as const;
export const FIT_WORDS = { 'straight-swap': 'straight swap only', 'swap-with-work': 'with work too' } as const;
export const CHECK_WORDS = {
  none: 'nothing to be checked',
  readings: 'readings counted',
  all: 'every check counted',
} as const;
export const REFUSAL_WORDS: Record<Refusal, string> = {
  'left-out': 'left out',
  source: 'from a source not asked',
  work: 'needs work',
  hours: 'too many hours',
  checks: 'to be checked first',
  lead: 'too many days, or not told',
  price: 'no price',
};
export const CHANCES = [90, 95, 99] as const;
export const SECONDS = [2, 5, 20] as const;

/** Every figure of the form: what it is called, and what it can be. */
export const FIGURES = {
  hours: { label: 'Of a swap at most', min: 0, max: 200 },
  lead: { label: 'Delivered within', min: 0, max: 1_000 },
  each: { label: 'Price of one, each', min: 0, max: 1_000_000 },
  perKw: { label: 'and for each kW', min: 0, max: 100_000 },
  perHour: { label: 'An hour of work', min: 0, max: 100_000 },
  years: { label: 'Swaps counted over', min: 0, max: 40 },
  days: { label: 'Made good in', min: 0, max: 1_000 },
  prior: { label: 'taken as seen in', min: 1, max: 10_000 },
} as const;
export type FigureName = keyof typeof FIGURES;

/** As many sets as are shown with a box each, and signs of a price list: both stand in an address of some 8,000 signs. */
export const MOST_TICKED = 300;
export const MOST_PRICE_SIGNS = 3_000;
