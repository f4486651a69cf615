import { describe, expect, test } from 'vitest';
import { type Demand, demandOfMean } from '@/lib/spares/demand/demand';
import { quantity } from '@/lib/spares/demand/quantity';
import { stock } from '@/lib/spares/demand/stock';
import { downHoursPerYear, waiting } from '@/lib/spares/demand/waiting';

/** A demand of this mean: a rate of 1 a year, seen in very many set-years, over so many years. */
const ofMean = (mean: number): Demand => demandOfMean({ shape: 1e6, years: 1e6 }, mean);

/**
 * Cumulative Poisson tables, as printed to four places: SP-POISTAB (statistical tables) and SP-UCLA
 * (P(X ≤ 1 | 1) = 0.73576); entry i is P(X ≤ i).
 */
const PRINTED: [mean: number, cdf: number[]][] = [
  [0.1, [0.9048, 0.9953]],
  [0.2, [0.8187, 0.9825, 0.9989]],
  [0.5, [0.6065, 0.9098, 0.9856, 0.9982, 0.9998]],
  [0.8, [0.4493, 0.8088, 0.9526]],
  [1, [0.3679, 0.7358, 0.9197, 0.981, 0.9963, 0.9994]],
  [1.5, [0.2231, 0.5578, 0.8088, 0.9344, 0.9814, 0.9955]],
  [2, [0.1353, 0.406, 0.6767, 0.8571, 0.9473, 0.9834, 0.9955]],
  [3, [0.0498, 0.1991, 0.4232, 0.6472, 0.8153, 0.9161, 0.9665, 0.9881]],
  [4, [0.0183, 0.0916, 0.2381, 0.4335, 0.6288, 0.7851, 0.8893, 0.9489]],
  [5, [0.0067, 0.0404, 0.1247, 0.265, 0.4405, 0.616, 0.7622, 0.8666, 0.9319, 0.9682]],
];

describe('The demand of a mean rate', () => {
  test.each(PRINTED)('of mean %d is as the tables print it', (mean, cdf) => {
    cdf.forEach((printed, count) => {
      expect(Math.abs(ofMean(mean).atMost(count) - printed)).toBeLessThanOrEqual(0.00005 + 1e-9);
    });
    expect(ofMean(mean).atMost(-1)).toBe(0);
  });

  test('asks for 11 spares of a textbook’s 30 parts at 95 %', () => {
    // SP-QUESBA: 30 parts, 1e-4 failures an hour, 90 days (2160 h), 95 %: mean 6.48, answer 11. No resupply within them.
    const demand = demandOfMean({ shape: 1e-4 * 1e9, years: 1e9 }, 30 * 2160);
    expect(demand.mean).toBeCloseTo(6.48, 9);
    expect(quantity(demand, 0.95)).toBe(11);
  });

  test('asks for one spare of 20 sets with 0.05 a year and eight weeks, at 95 % that none waits', () => {
    // spares-theory.json sp7: inputs invented there, the answer follows from the published law.
    const asked = { rate: { shape: 0.05 * 1e9, years: 1e9 }, sets: 20, chance: 0.95, law: 'mean' } as const;
    const of = stock({ ...asked, days: (8 / 52) * 365 });
    expect(of.away).toBeCloseTo(0.153846, 6);
    expect(of.held).toBe(1);
    expect(of.noneWaits).toBeCloseTo(0.989312, 6);
    expect(of.foundAtOnce).toBeCloseTo(0.857404, 6);
    expect(of.apart).toBe(20);
  });

  test('is refused for a chance that no number of spares can give', () => {
    expect(() => quantity(ofMean(1), 1)).toThrow('below 1');
    expect(() => quantity(ofMean(20_000), 0.9)).toThrow('more than 10000');
  });

  test('of nothing is nothing', () => {
    expect([ofMean(0).atMost(0), quantity(ofMean(0), 0.99), waiting(ofMean(0), 0)]).toEqual([1, 0, 0]);
  });
});

// A rate of an hour run in a plant told to run no hours (published-rates), and no failure seen: Poisson of mean 0.
test('Of sets that never fail one motor is held and none waits, by either law', () => {
  for (const law of ['mean', 'uncertain'] as const)
    expect(stock({ rate: { shape: 0, years: 50 }, sets: 3, days: 30, chance: 0.95, law })).toMatchObject({
      ...{ away: 0, held: 1, needed: { mean: 0, uncertain: 0 } },
      ...{ noneWaits: 1, foundAtOnce: 1, waiting: 0, downHours: 0 },
    });
});

describe('Sets that wait', () => {
  // spares-theory.json sp2 to sp4: from the definition of an expectation.
  test.each([
    [0.5, 0, 0.5],
    [0.5, 1, 0.106531],
    [0.5, 2, 0.016327],
    [1, 1, 0.367879],
    [1, 2, 0.103638],
    [2, 2, 0.541341],
    [2, 3, 0.218018],
  ])('of mean %d with %d held are %d', (mean, held, expected) => {
    expect(waiting(ofMean(mean), held)).toBeCloseTo(expected, 6);
  });

  test('never fall below none', () => {
    expect(waiting(ofMean(0.3), 60)).toBeGreaterThanOrEqual(0);
    expect(waiting(ofMean(0.3), 60)).toBeLessThan(1e-12);
  });

  test('stand 8760 hours a year each', () => {
    expect(downHoursPerYear(0.5)).toBe(4380);
  });
});

test('Pooling saves what the square-root law says, where the demand is large', () => {
  // SP-IEOR, spares-theory.json sp5: 4, 9, 25 and 100 sites save 50, 67, 80 and 90 % of what is held beyond the mean.
  const beyond = (mean: number) => quantity(ofMean(mean), 0.977) - mean;
  for (const [sites, pct] of [
    [4, 50],
    [9, 67],
    [25, 80],
    [100, 90],
  ] as const) {
    const saving = 1 - beyond(sites * 90) / (sites * beyond(90));
    // Whole spares, and a demand that is not quite normal: three points.
    expect(Math.abs(100 * saving - pct)).toBeLessThan(3);
  }
});
