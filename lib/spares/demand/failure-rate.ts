import gammaQuantile from '@stdlib/stats-base-dists-gamma-quantile';

/**
 * What is believed of the failures of one set in a year: a gamma distribution of that many failures (`shape`) seen in that
 * many set-years. Its mean is shape / years.
 */
export interface FailureRate {
  shape: number;
  years: number;
}

/** A published rate taken as if it had been seen in so many set-years. */
export const rateOfPrior = (perYear: number, years: number): FailureRate => ({ shape: perYear * years, years });

/** The rate after the plant's own record. Gamma and Poisson are conjugate: failures and years are added. */
export const rateAfter = (prior: FailureRate, seen: { failures: number; years: number }): FailureRate => ({
  shape: prior.shape + seen.failures,
  years: prior.years + seen.years,
});

export const meanRate = ({ shape, years }: FailureRate): number => shape / years;

/** Below `from` it lies with a chance of 5 %, above `to` with another 5 %. */
export function rateInterval({ shape, years }: FailureRate): { from: number; to: number } {
  return { from: gammaQuantile(0.05, shape, years), to: gammaQuantile(0.95, shape, years) };
}
