/** What is to be least: the number of different motors, what is paid for them, or that and the work of swaps besides. */
export const AIMS = ['fewest', 'cheapest', 'cheapest-with-work'] as const;
export type Aim = (typeof AIMS)[number];

/** Which motors may be chosen from. */
export const SOURCES = ['both', 'shelf', 'buy'] as const;
export type HoldSource = (typeof SOURCES)[number];

/** Whether a motor counts as cover that needs work, or that must be checked first. */
export const FITS = ['straight-swap', 'swap-with-work'] as const;
export const CHECKS = ['none', 'readings', 'all'] as const;

/** How the choice is made. Every figure is one that a person sees and may change. */
export interface ChoiceOptions {
  aim: Aim;
  from: HoldSource;
  /** Not to be held: plant numbers of the shelf, with all that are alike, and ratings to buy as their `id` names them. */
  without: readonly string[];
  fit: (typeof FITS)[number];
  /** Hours of a whole swap, at most, where it needs work. */
  mostHours: number;
  /** none: only what can be told now; readings: also what readings that anyone can take will tell; all: whatever is to be checked. */
  checks: (typeof CHECKS)[number];
  /** Days until a bought one is there, at most; null: however long, told or not. */
  mostLeadDays: number | null;
  /** With `cheapest-with-work`: what an hour of work costs, and over how many years swaps are counted. */
  perHour: number | null;
  years: number;
}
