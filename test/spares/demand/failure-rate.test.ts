import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demandOfUncertain } from '@/lib/spares/demand/demand';
import { meanRate, rateAfter, rateInterval, rateOfPrior } from '@/lib/spares/demand/failure-rate';
import { publishedRates } from '@/lib/standards/published-rates';

describe('A failure rate', () => {
  test('is a published one, until the plant has a record of its own', () => {
    const prior = rateOfPrior(0.175, 10);
    expect(meanRate(prior)).toBeCloseTo(0.175, 12);
    // The longer the record, the nearer its own share of failures: 12 in 400 set-years are 0.03.
    expect(meanRate(rateAfter(prior, { failures: 12, years: 400 }))).toBeCloseTo((1.75 + 12) / 410, 12);
    expect(meanRate(rateAfter(prior, { failures: 12_000, years: 400_000 }))).toBeCloseTo(0.03, 4);
  });

  // Johnson, Ott and Dogucu, “Bayes Rules!”, chapter 5: a gamma of 10 in 2, and 6, 2, 2 and 1 seen in four days, are a gamma
  // of 21 in 6 (read in the notes of a reading circle).
  test('after a record is that of the textbook’s worked example', () => {
    expect(rateAfter({ shape: 10, years: 2 }, { failures: 6 + 2 + 2 + 1, years: 4 })).toEqual({ shape: 21, years: 6 });
  });

  test('after a record is what Bayes’ rule gives when it is integrated step by step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.4, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.integer({ min: 0, max: 15 }),
        fc.double({ min: 1, max: 300, noNaN: true }),
        (perYear, weight, failures, years) => {
          const prior = rateOfPrior(perYear, weight);
          const after = rateAfter(prior, { failures, years });
          // Prior density times likelihood, unscaled, in the logarithm of the rate: from far below to far above.
          const density = (rate: number) =>
            prior.shape * Math.log(rate) - prior.years * rate + failures * Math.log(rate) - years * rate;
          const points = Array.from({ length: 40_001 }, (_, i) => Math.exp(-400 + (402 * i) / 40_000));
          const top = Math.max(...points.map(density));
          const weights = points.map((rate) => Math.exp(density(rate) - top));
          const total = weights.reduce((sum, one) => sum + one, 0);
          const mean = points.reduce((sum, rate, i) => sum + rate * (weights[i] as number), 0) / total;
          expect(Math.abs(meanRate(after) / mean - 1)).toBeLessThan(1e-3);
          const { from, to } = rateInterval(after);
          const below = (limit: number) =>
            points.reduce((sum, rate, i) => sum + (rate <= limit ? (weights[i] as number) : 0), 0) / total;
          expect(Math.abs(below(from) - 0.05)).toBeLessThan(3e-3);
          expect(Math.abs(below(to) - 0.95)).toBeLessThan(3e-3);
          // And the failures to come: the Poisson chance of none, averaged over the rates believed in.
          const none = points.reduce((sum, rate, i) => sum + Math.exp(-2 * rate) * (weights[i] as number), 0) / total;
          expect(demandOfUncertain(after, 2).atMost(0)).toBeCloseTo(none, 4);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('Published rates', () => {
  const of = (id: string, hours: number | null = null) => publishedRates(hours).find((rate) => rate.id === id);
  // reliability.json: what each comes to in a year is derived there, at 8760 h.
  test.each([
    ['handbook-least', 0.009, 'published'],
    ['handbook-greatest', 0.175, 'published'],
    ['one-site-least', 0.304, 'published'],
    ['one-site-greatest', 0.332, 'published'],
    ['pump-fleet', 0.13, 'published'],
    ['refinery', 0.24, 'published'],
    ['survey-600-v', 0.0109, 'memory'],
    ['survey-200-hp-greatest', 0.0824, 'memory'],
    ['survey-1985', 0.0708, 'memory'],
    ['nuclear', 0.0438, 'memory'],
  ])('%s is %d a year, %s', (id, perYear, status) => {
    expect(of(id)?.perYear).toBeCloseTo(perYear, perYear < 0.1 ? 3 : 2);
    expect(of(id)?.status).toBe(status);
  });

  test('of hours run follow the hours run', () => {
    expect(of('handbook-greatest', 4000)?.perYear).toBeCloseTo(0.08, 12);
    expect(of('refinery', 4000)?.perYear).toBeCloseTo(0.24, 12);
  });

  test('differ more than ten-fold, as their own caution says', () => {
    const motors = publishedRates(null).filter((rate) => rate.of === 'motor');
    const years = motors.map(({ perYear }) => perYear);
    expect(Math.max(...years) / Math.min(...years)).toBeGreaterThan(10);
    expect(new Set(motors.map(({ id }) => id)).size).toBe(motors.length);
  });
});
