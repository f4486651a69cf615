import { type Demand, demandOfMean, demandOfUncertain } from './demand';
import type { FailureRate } from './failure-rate';
import { quantity } from './quantity';
import { downHoursPerYear, waiting } from './waiting';

export const LAWS = ['mean', 'uncertain'] as const;
export type Law = (typeof LAWS)[number];

export interface StockAsked {
  /** Failures of one set in a year. */
  rate: FailureRate;
  /** Sets that share the motor. */
  sets: number;
  /** Days until a motor that was used is made good, in the mean: back from repair, or bought anew. */
  days: number;
  /** The chance wanted, from 0 to below 1, that no set waits at a random moment. */
  chance: number;
  law: Law;
}

export interface Stock {
  /** Motors away at a random moment, in the mean. */
  away: number;
  /** So many that the chance is kept; the motor is held for these sets, so at least one. */
  held: number;
  /** What the chance alone asks for, by the mean rate and by the uncertain one. */
  needed: Record<Law, number>;
  /** The chance that no set waits at a random moment. */
  noneWaits: number;
  /** The chance that the next failure finds one on the shelf. */
  foundAtOnce: number;
  /** Sets waiting in the mean, and what that is in hours of standing a year over all of them. */
  waiting: number;
  downHours: number;
  /** The same with none held. */
  downHoursWithNone: number;
  /** Spares if each set had its own, kept to the same chance, and at least one. */
  apart: number;
}

/** How many of a motor to hold for the sets that share it, and what that does. */
export function stock({ rate, sets, days, chance, law }: StockAsked): Stock {
  const demandFor = (count: number): Record<Law, Demand> => {
    const setYears = (count * days) / DAYS_OF_YEAR;
    return { mean: demandOfMean(rate, setYears), uncertain: demandOfUncertain(rate, setYears) };
  };
  const shared = demandFor(sets);
  const needed = { mean: quantity(shared.mean, chance), uncertain: quantity(shared.uncertain, chance) };
  const demand = shared[law];
  const held = Math.max(1, needed[law]);
  const waits = waiting(demand, held);
  return {
    ...{ away: demand.mean, held, needed },
    ...{ noneWaits: demand.atMost(held), foundAtOnce: demand.atMost(held - 1) },
    ...{ waiting: waits, downHours: downHoursPerYear(waits), downHoursWithNone: downHoursPerYear(demand.mean) },
    apart: sets * Math.max(1, quantity(demandFor(1)[law], chance)),
  };
}

const DAYS_OF_YEAR = 365;
