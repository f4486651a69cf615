import negativeBinomialCdf from '@stdlib/stats-base-dists-negative-binomial-cdf';
import poissonCdf from '@stdlib/stats-base-dists-poisson-cdf';
import { type FailureRate, meanRate } from './failure-rate';

/** How many motors are away at a random moment, since they were needed and are not made good yet. */
export interface Demand {
  mean: number;
  /** The chance that no more than so many are away. */
  atMost: (count: number) => number;
}

/**
 * By the mean rate alone. However times to make good are spread, the number away is Poisson with the mean of failures in
 * the mean time (Palm's theorem); it needs failures that do not hang together, and a shop in which none waits for another.
 */
export function demandOfMean(rate: FailureRate, setYears: number): Demand {
  const mean = meanRate(rate) * setYears;
  return { mean, atMost: (count) => (count < 0 ? 0 : poissonCdf(count, mean)) };
}

/**
 * By the rate as uncertain as it is: Poisson mixed over its gamma distribution, which is negative binomial with shape
 * `shape` and chance years / (years + setYears). The mean is the same, the tail is longer.
 */
export function demandOfUncertain(rate: FailureRate, setYears: number): Demand {
  const { shape, years } = rate;
  // Where nothing is away, or nothing fails at all, there is nothing to be uncertain about: the law has no shape of 0.
  if (setYears === 0 || shape === 0) return demandOfMean(rate, setYears);
  const chance = years / (years + setYears);
  return {
    mean: meanRate(rate) * setYears,
    atMost: (count) => (count < 0 ? 0 : negativeBinomialCdf(count, shape, chance)),
  };
}
