import { expect, test } from 'vitest';
import { load } from '@/lib/plausibility/set/load';
import { set } from '../../matching/easy';
import { inSet, row } from '../in-set';

const of = (
  shaftKw: number | null,
  ofMotor: Parameters<typeof inSet>[2] = {},
  coupling: object = {},
  ofLoad: object = {},
) => inSet(load, { load: { shaftKw, atPumpRpm: 1750, ...ofLoad }, coupling }, ofMotor);

// 5 hp with a service factor of 1.15 is 3.73 × 1.15 = 4.29 kW; NEMA MG 1-12.51. A twentieth is measured away.
test.each([
  ['within the rating', 3.7, {}, null],
  ['within the service factor', 4.2, {}, null],
  ['a twentieth above that', 4.5, {}, null],
  ['more', 4.6, {}, 'doubtful'],
  ['1.3 times it', 5.57, {}, 'doubtful'],
  ['more than that', 5.6, {}, 'wrong'],
  ['no service factor printed is 1.0', 4.2, { serviceFactor: null }, 'doubtful'],
  ['a service factor of the row wins', 4.2, { ...row({ serviceFactor: 1 }) }, 'doubtful'],
] as const)('%s', (_, shaftKw, ofMotor, grade) => {
  expect(of(shaftKw, ofMotor)?.grade ?? null).toBe(grade);
});

test('gear and belt take their share; a gear nobody told is lossless', () => {
  expect(of(4.4, {}, { type: 'belt', ratio: 1 })?.says).toContain('4.4 kW at the pump / 0.95 = 4.63 kW at the motor');
  expect(of(4.4, {}, { type: 'gear', ratio: 1, efficiencyPct: 90 })?.grade).toBe('doubtful');
  expect(of(4.4, {}, { type: 'gear', ratio: 1 })).toBeNull();
});

test('a load told at another speed follows the pump', () => {
  // Constant torque: power goes with the speed; quadratic: with its cube.
  const slow = { atPumpRpm: 1400 };
  expect(of(4, {}, {}, { ...slow, kind: 'constant-torque' })?.says).toMatch(
    /^4 kW at the pump × 1\.25 for 1750 rpm = 5 kW/,
  );
  expect(of(2.4, {}, {}, { ...slow, kind: 'quadratic' })?.says).toMatch(
    /^2\.4 kW at the pump × 1\.95 for 1750 rpm = 4\.69 kW/,
  );
  expect(of(4, {}, {}, { ...slow, kind: null })).toBeNull();
});

test('the sum is shown, and the load it could carry', () => {
  expect(of(6)).toMatchObject({
    grade: 'wrong',
    field: 'load.shaftKw',
    expected: 4.29,
    says: '6 kW at the pump = 6 kW at the motor; M-1 carries 3.73 kW × 1.15 = 4.29 kW: 140 % of it.',
  });
});

test.each([
  ['no load', of(null)],
  ['no power', of(60, row({ hp: null }))],
  ['no row for the supply', inSet(load, { load: { shaftKw: 60 }, supply: { volts: 230 } })],
  ['no motor', load(set({ load: { shaftKw: 60 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
