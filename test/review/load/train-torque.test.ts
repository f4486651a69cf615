import { expect, test } from 'vitest';
import { trainTorque } from '@/lib/review/load/train-torque';
import { inPlace, row } from '../in-place';

// 7.5 kW at 2940 rpm is 24.4 N·m, 15 kW at 2960 rpm 48.4 N·m: a published data sheet.
const sevenKw = { ...row({ hp: null, kw: 7.5, rpm: 2940, amps: 12 }), poles: 2 };
const of = (maxTorqueNm: number | null, shaftKw: number | null = 5) =>
  trainTorque(inPlace({ coupling: { maxTorqueNm }, load: { shaftKw, atPumpRpm: 2940 } }, sevenKw));

test.each([
  ['a coupling for more', 24.6, null],
  ['a coupling for less than the motor gives', 24.1, 'plan'],
  ['a coupling for less than the duty asks', 16, 'at-once'],
] as const)('%s', (_, limit, urgency) => {
  // 5 kW at 2940 rpm ask 16.2 N·m: T = 9550 P/n (read in two texts).
  expect(of(limit)?.urgency ?? null).toBe(urgency);
});

test('the sum stands in the sentence', () => {
  expect(of(20)?.says).toBe('9550 × 7.5 kW / 2940 rpm = 24.36 N·m at full load; coupling or gear may carry 20 N·m.');
});

test('a plate without its power is read first', () => {
  const asked = inPlace({ coupling: { maxTorqueNm: 20 }, load: { shaftKw: null } }, row({ hp: null }));
  expect(trainTorque(asked)).toMatchObject({ urgency: 'look', have: null, reading: expect.stringContaining('plate') });
});

test('is not asked where no limit is told', () => {
  expect(of(null)).toBeNull();
});
