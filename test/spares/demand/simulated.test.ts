import { describe, expect, test } from 'vitest';
import { demandOfMean, demandOfUncertain } from '@/lib/spares/demand/demand';
import { stock } from '@/lib/spares/demand/stock';
import { waiting } from '@/lib/spares/demand/waiting';
import { seeded } from './seeded';

/**
 * Failures come one by one at random; each takes a motor away for a time of any spread, here short and long ones of the
 * same mean. Nothing of the program's own laws is used: the motors away are counted at moments far enough apart to be
 * nearly independent.
 */
function simulated(perYear: number, meanYears: number, moments: number, seed: number) {
  const random = seeded(seed);
  const exponential = (mean: number) => -mean * Math.log(1 - random());
  const apart = 40 * meanYears;
  const backAt: number[] = [];
  const counts: number[] = [];
  let next = exponential(1 / perYear);
  for (let moment = 1; moment <= moments; moment += 1) {
    const now = moment * apart;
    for (; next <= now; next += exponential(1 / perYear)) {
      // Two in three come back in half the mean, one in three in twice it: the mean is the mean.
      const away = random() < 2 / 3 ? meanYears / 2 : 2 * meanYears;
      backAt.push(next + away);
    }
    counts.push(backAt.filter((at) => at > now).length);
    backAt.splice(0, backAt.length, ...backAt.filter((at) => at > now));
  }
  return counts;
}

const MOMENTS = 40_000;

describe('Motors away, simulated with times that are not exponential', () => {
  const perYear = 6;
  const meanYears = 0.25;
  const counts = simulated(perYear, meanYears, MOMENTS, 20_261_128);
  const demand = demandOfMean({ shape: perYear * 1e6, years: 1e6 }, meanYears);

  test.each([0, 1, 2, 3, 4])('no more than %d are away as often as Palm’s theorem has it', (count) => {
    const p = demand.atMost(count);
    const share = counts.filter((one) => one <= count).length / MOMENTS;
    expect(Math.abs(share - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / MOMENTS)); // four standard errors
  });

  test.each([0, 1, 2, 3])('with %d held as many wait', (held) => {
    const waits = counts.map((one) => Math.max(0, one - held));
    const mean = waits.reduce((sum, one) => sum + one, 0) / MOMENTS;
    const variance = waits.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (MOMENTS - 1);
    expect(Math.abs(mean - waiting(demand, held))).toBeLessThan(4 * Math.sqrt(variance / MOMENTS));
  });
});

describe('Demand by a rate that is not known well', () => {
  const rate = { shape: 2.5, years: 40 };
  const setYears = 30;

  test('is Poisson over rates drawn from what is believed of them', () => {
    const random = seeded(7);
    const draws = 40_000;
    const counts = Array.from({ length: draws }, () =>
      poissonDraw(gammaDraw(rate.shape, rate.years, random) * setYears, random),
    );
    const demand = demandOfUncertain(rate, setYears);
    for (const count of [0, 1, 2, 4, 7]) {
      const p = demand.atMost(count);
      const share = counts.filter((one) => one <= count).length / draws;
      expect(Math.abs(share - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / draws));
    }
  });

  test('has the mean of the mean rate and never asks for fewer than a known rate at a high chance', () => {
    expect(demandOfUncertain(rate, setYears).mean).toBeCloseTo((2.5 / 40) * 30, 12);
    for (const sets of [1, 5, 20, 80]) {
      const { needed } = stock({ rate, sets, days: 56, chance: 0.99, law: 'mean' });
      expect(needed.uncertain).toBeGreaterThanOrEqual(needed.mean);
    }
  });

  test('comes to the known rate as the record grows', () => {
    const long = { shape: 2.5e6, years: 40e6 };
    for (const count of [0, 1, 3])
      expect(demandOfUncertain(long, setYears).atMost(count)).toBeCloseTo(
        demandOfMean(long, setYears).atMost(count),
        5,
      );
  });
});

/** Sum of halves and exponentials: a gamma of shape 2.5 is two exponentials and half a squared normal. */
function gammaDraw(shape: number, years: number, random: () => number): number {
  if (shape !== 2.5) throw new Error('drawn for a shape of 2.5 alone');
  const normal = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  return (normal ** 2 / 2 - Math.log(1 - random()) - Math.log(1 - random())) / years;
}

function poissonDraw(mean: number, random: () => number): number {
  const step = () => -Math.log(1 - random());
  let count = 0;
  for (let left = mean - step(); left > 0; left -= step()) count += 1;
  return count;
}
