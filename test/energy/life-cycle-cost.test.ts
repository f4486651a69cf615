import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LifeCycleAssumptions, lifeCycleCost, presentYears } from '@/lib/energy/life-cycle-cost';
import { simplePayback } from '@/lib/energy/simple-payback';

const KW_PER_HP = 0.7457;

/** dP = hp × 0.7457 × load × (1/η old − 1/η new): published, two texts. */
const saved = (hp: number, load: number, old: number, better: number) => hp * KW_PER_HP * load * (1 / old - 1 / better);

describe('simple payback of the published examples', () => {
  test('60 hp, 89 against 93.2 %, 3500 h at 0.08, 4520 against 5160: 1.01 years (textbook example)', () => {
    const money = saved(60, 1, 0.89, 0.932) * 3_500 * 0.08;
    expect(money).toBeCloseTo(634.33, 0);
    expect(simplePayback(5_160 - 4_520, money)).toBeCloseTo(1.009, 2);
  });

  test('25 hp, 88.5 against 91 %, 4000 h at 0.06: 138.95 a year (worked example); nothing extra is paid at once', () => {
    const money = saved(25, 1, 0.885, 0.91) * 4_000 * 0.06;
    expect(Math.abs(money - 138.95)).toBeLessThan(0.3);
    expect(simplePayback(0, money)).toBe(0);
  });

  test('75 hp at 75 %, 91 against 95.4 %, 4368 h at 0.12, 71 extra: 0.0637 years (answer page)', () => {
    const money = saved(75, 0.75, 0.91, 0.954) * 4_368 * 0.12;
    expect(money / 1_114.32).toBeCloseTo(1, 2);
    expect(simplePayback(71, money)).toBeCloseTo(0.0637, 4);
  });

  // A file on motor upgrades: 564 a year of 2600: 4.6 years.
  test('2600 for 564 a year: 4.6 years', () => {
    expect(simplePayback(2_600, 564)).toBeCloseTo(4.6, 1);
  });

  test('what saves nothing never pays back, and what is not known is not known', () => {
    expect(simplePayback(100, -1)).toBe('never');
    expect(simplePayback(null, 5)).toBeNull();
    expect(simplePayback(100, null)).toBeNull();
  });
});

describe('present value', () => {
  // The textbook's uniform-series factor (P/A, i, n) of engineering economy, from memory: (P/A, 10 %, 10) = 6.1446.
  test('a payment at the end of each of 10 years at 10 % is worth 6.1446 of it', () => {
    expect(presentYears(10, 0.1, 0)).toBeCloseTo(6.1446, 4);
  });

  // NIST Handbook 135, modified uniform present value at e = d, from memory: each year is worth what it is today.
  test('a price that grows as fast as the discount leaves as many years as there are', () => {
    expect(presentYears(10, 0.08, 0.08)).toBeCloseTo(10, 9);
  });

  // DOE/GO-102001-1190, “Pump Life Cycle Costs” (2001), example of a problem control valve, from memory: 8 years at 8 %
  // interest and 4 % inflation, 0.08 a kWh, 6000 h; routine maintenance each year, a repair every second one.
  test.each([
    ['another valve', 5_000, 11_088, 500, 91_827],
    ['a trimmed impeller', 2_250, 6_720, 500, 59_481],
    ['a drive', 21_500, 5_568, 1_000, 74_313],
  ])('%s: %i now, %i of energy and %i of care a year come to %i', (_, initial, energy, care, total) => {
    const perYear = (energy + care) * presentYears(8, 0.08, 0.04);
    const repairs = 2_500 * presentYears(4, 1.08 ** 2 - 1, 1.04 ** 2 - 1);
    expect(Math.abs(initial + perYear + repairs - total)).toBeLessThan(3); // its factors are rounded
  });

  test('without discount and growth ten years are ten', () => {
    expect(presentYears(10, 0, 0)).toBe(10);
  });
});

const told: LifeCycleAssumptions = {
  ...{ purchase: 2_000, energyPerYear: 5_000, years: 10, discountRatePct: 10, energyPriceGrowthPct: 0 },
  ...{ workHours: 4, workPerHour: 60, downHours: 6, downtimePerHour: 500 },
};

test('all parts add up: 2000 + 4·60 + 6·500 + 5000·6.1446', () => {
  const { total, purchase, work, downtime, energy } = lifeCycleCost(told);
  expect([purchase.value, work.value, downtime.value]).toEqual([2_000, 240, 3_000]);
  expect(energy.value).toBeCloseTo(30_723, 0);
  expect(total.value).toBeCloseTo(35_963, 0);
});

test.each<[keyof LifeCycleAssumptions, keyof ReturnType<typeof lifeCycleCost>]>([
  ['purchase', 'purchase'],
  ['energyPerYear', 'energy'],
  ['years', 'energy'],
  ['discountRatePct', 'energy'],
  ['energyPriceGrowthPct', 'energy'],
  ['workHours', 'work'],
  ['workPerHour', 'work'],
  ['downHours', 'downtime'],
  ['downtimePerHour', 'downtime'],
])('without %s there is no %s and no total, and it says which is missing', (missing, part) => {
  const answer = lifeCycleCost({ ...told, [missing]: null });
  expect(answer[part]).toMatchObject({ value: null, why: expect.stringMatching(/not known/) });
  expect(answer.total.value).toBeNull();
});

test('dearer energy, more years or more growth never cost less; a higher discount never more', () => {
  const figure = fc.double({ min: 0, max: 30, noNaN: true });
  fc.assert(
    fc.property(figure, figure, fc.integer({ min: 1, max: 30 }), figure, (rate, growth, years, more) => {
      const at = (differs: Partial<LifeCycleAssumptions>) =>
        lifeCycleCost({ ...told, discountRatePct: rate, energyPriceGrowthPct: growth, years, ...differs }).total
          .value ?? Number.NaN;
      const here = at({}) * (1 - 1e-12);
      expect(at({ energyPerYear: 5_000 + more })).toBeGreaterThanOrEqual(here);
      expect(at({ years: years + 1 })).toBeGreaterThanOrEqual(here);
      expect(at({ energyPriceGrowthPct: growth + more })).toBeGreaterThanOrEqual(here);
      expect(at({ discountRatePct: rate + more })).toBeLessThanOrEqual(at({}) * (1 + 1e-12));
    }),
  );
});
