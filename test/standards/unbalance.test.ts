import { expect, test } from 'vitest';
import { type Three, unbalancePct } from '@/lib/standards/unbalance';

/** Worked examples as they are printed: three readings, per cent, and how far its last digit reaches. */
const PRINTED: readonly [Three, number, number, string][] = [
  [[33, 29, 34], 9.4, 0.05, 'amps: an instrument’s manual, current imbalance of a motor'],
  [[51, 46, 53], 8, 1e-9, 'amps: a pump maker’s manual, hookup 1'],
  [[50, 48, 52], 4, 1e-9, 'amps: the same, hookup 2'],
  [[50, 49, 51], 2, 1e-9, 'amps: the same, hookup 3'],
  [[462, 463, 455], 1.1, 0.05, 'volts: NEMA MG 1 definition, an engineers’ forum with its example'],
  [
    [203, 210, 212],
    2.5,
    0.1,
    'volts: a motor protector’s data sheet, NEMA MG 1 formula; it prints 2.5 for 5.3 / 208.3',
  ],
  [[480, 476, 472], 0.84, 0.005, 'volts: an electrical knowledge base, NEMA MG 1 definition'],
  [[460, 467, 450], 1.96, 0.005, 'volts: a calculator’s example, NEMA MG 1 definition'],
];

test.each(PRINTED)('%j is uneven by %f %%', (three, pct, within, source) => {
  expect(Math.abs((unbalancePct(three) ?? Number.NaN) - pct), source).toBeLessThanOrEqual(within);
});

test('three that are the same are even, and nothing flowing says nothing', () => {
  expect(unbalancePct([6, 6, 6])).toBe(0);
  expect(unbalancePct([0, 0, 0])).toBeNull();
});
