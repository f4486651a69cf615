import fc from 'fast-check';
import { expect, test } from 'vitest';
import { grouped, type ReviewSum, sumOf } from '@/lib/review/list/grouped';
import { GROUPINGS, NO_AREA } from '@/lib/review/list/review-filter';
import { anyRows, cost, row } from './rows';

const rows = [
  row({ setId: '1', areaId: 'b', area: 'Hall 10', finding: { cost: cost(100.004, 999.6) } }),
  row({ setId: '2', areaId: 'a', area: 'Hall 9', isAccepted: true, finding: { cost: cost(50) } }),
  row({ setId: '3', areaId: null, area: null, finding: { rule: 'start', cost: { kind: 'not-energy' } } }),
  row({
    setId: '4',
    areaId: 'b',
    area: 'Hall 10',
    finding: { cost: { kind: 'unpriced', kwh: 40.2, why: 'no price' } },
  }),
];

test('a sum counts open and accepted, adds whole kilowatt-hours and hundredths, and says of how many no price is known', () => {
  expect(sumOf(rows)).toEqual({ count: 4, open: 3, accepted: 1, kwh: 1_540, moneyHundredths: 15_000, unpriced: 1 });
});

test('by area: by name, as people count, those of no area last', () => {
  expect(grouped(rows, 'area').map(({ key, name, sum }) => [key, name, sum.count])).toEqual([
    ['a', 'Hall 9', 1],
    ['b', 'Hall 10', 2],
    [NO_AREA, null, 1],
  ]);
});

test('by rule: in the order of the rules', () => {
  expect(grouped(rows, 'rule').map(({ key, sum }) => [key, sum.count])).toEqual([
    ['oversized', 3],
    ['start', 1],
  ]);
});

test('the sums of the groups are the sum of all, to the hundredth, and every row is in one group', () => {
  fc.assert(
    fc.property(anyRows, fc.constantFrom(...GROUPINGS), (of, by) => {
      const groups = grouped(of, by);
      const together = groups.reduce<ReviewSum>(
        (all, { sum }) => ({
          count: all.count + sum.count,
          open: all.open + sum.open,
          accepted: all.accepted + sum.accepted,
          kwh: all.kwh + sum.kwh,
          moneyHundredths: all.moneyHundredths + sum.moneyHundredths,
          unpriced: all.unpriced + sum.unpriced,
        }),
        sumOf([]),
      );
      expect(together).toEqual(sumOf(of));
      expect(together.open + together.accepted).toBe(of.length);
      expect(new Set(groups.flatMap((group) => group.rows))).toEqual(new Set(of));
    }),
  );
});
