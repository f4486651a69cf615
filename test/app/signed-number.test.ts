import { expect, test } from 'vitest';
import { signedNumber } from '@/app/signed-number';

const bounds = { min: -10, max: 10 };

test.each<[string, number]>([
  ['-0.5', -0.5],
  ['−0,5', -0.5],
  ['+0.3', 0.3],
  ['0', 0],
  [' - 2 ', -2],
])('%j is read', (typed, value) => {
  expect(signedNumber(typed, bounds)).toMatchObject({ ok: true, value });
});

test.each(['-11', '11', '--1', 'a little', '-', ''])('%j is refused', (typed) => {
  expect(signedNumber(typed, bounds).ok).toBe(false);
});

test('below zero is refused where the figure cannot be', () => {
  expect(signedNumber('-5', { min: 0, max: 10 }).ok).toBe(false);
  expect(signedNumber('5', { min: 0, max: 10 })).toMatchObject({ ok: true, value: 5 });
});
