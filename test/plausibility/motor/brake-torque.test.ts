import { expect, test } from 'vitest';
import { brakeTorque } from '@/lib/plausibility/motor/brake-torque';
import { withRow } from '../row';

// 7.5 kW at 2940 rpm is 24.4 N·m by a data sheet: 9549 × 7.5 / 2940.
const of = (torqueNm: number | null, rest: Parameters<typeof withRow>[1] = {}, row = {}) =>
  brakeTorque(
    withRow({ hp: null, kw: 7.5, hertz: 50, rpm: 2940, ...row }, { has: ['brake'], brake: { torqueNm }, ...rest }),
  );

// The range of 0.4 to 6 times rated torque: common practice, no source.
test.each([
  ['twice the rated torque', 50, null],
  ['the least', 9.75, null],
  ['less', 9.7, 'doubtful'],
  ['the most', 146, null],
  ['more', 147, 'doubtful'],
  ['thirty times', 735, 'wrong'],
  ['a twelfth', 1.9, 'wrong'],
])('%s', (_, torqueNm, grade) => {
  expect(of(torqueNm)?.grade ?? null).toBe(grade);
});

test('the sum is shown', () => {
  expect(of(500)?.says).toBe(
    '9549 × 7.5 kW / 2940 rpm = 24.4 N·m at full load; the brake’s 500 N·m is 20.53 times that, where brakes have 0.4 to 6 times.',
  );
});

test('a brake on a motor that is told to have none is wrong', () => {
  expect(of(50, { has: [] })?.grade).toBe('wrong');
  expect(of(50, { has: null })).toBeNull();
});

test.each([
  ['no brake torque', of(null)],
  ['no power', of(500, {}, { kw: null })],
  ['no speed', of(500, {}, { rpm: null })],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
