import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadHistogram } from '@/lib/review/charts/load-histogram';
import { lossesByArea } from '@/lib/review/charts/losses-by-area';

test('a load on an edge belongs to the step above, and what is beyond the last stands together', () => {
  const { bins, unknown } = loadHistogram([0, 9.99, 10, 39.9, 40, 100, 119.9, 120, 250, null]);
  expect(bins.map(({ fromPct, sets }) => [fromPct, sets]).filter(([, sets]) => sets !== 0)).toEqual([
    [0, 2],
    [10, 1],
    [30, 1],
    [40, 1],
    [100, 1],
    [110, 1],
    [120, 2],
  ]);
  expect([unknown, bins.at(-1)?.toPct]).toEqual([1, null]);
});

test('every set is in one step or unknown', () => {
  fc.assert(
    fc.property(fc.array(fc.option(fc.double({ min: 0, max: 1_000, noNaN: true }))), (loads) => {
      const { bins, unknown } = loadHistogram(loads);
      expect(bins.reduce((sum, { sets }) => sum + sets, unknown)).toBe(loads.length);
    }),
  );
});

test('losses are summed area by area, the greatest first, and those not known are counted apart', () => {
  const sets = [
    { area: 'A', kwh: 100.4, money: 12.345 },
    { area: 'B', kwh: 900, money: null },
    { area: 'A', kwh: null, money: null },
    { area: null, kwh: 100, money: 10 },
  ];
  expect(lossesByArea(sets)).toEqual([
    { area: 'B', kwh: 900, moneyHundredths: 0, known: 1, unknown: 0 },
    { area: 'A', kwh: 100, moneyHundredths: 1_235, known: 1, unknown: 1 },
    { area: null, kwh: 100, moneyHundredths: 1_000, known: 1, unknown: 0 },
  ]);
});
