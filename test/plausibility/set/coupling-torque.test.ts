import { expect, test } from 'vitest';
import { couplingTorque } from '@/lib/plausibility/set/coupling-torque';
import { set } from '../../matching/easy';
import { inSet, row } from '../in-set';

const of = (maxTorqueNm: number | null, ofMotor: Parameters<typeof inSet>[2] = {}, supply: object = {}) =>
  inSet(couplingTorque, { coupling: { maxTorqueNm }, supply }, ofMotor);

// 7.5 kW at 2940 rpm is 24.4 N·m by a data sheet.
const sheet = { ...row({ hp: null, kw: 7.5, rpm: 2940 }), poles: 2 };

test.each([
  ['more than the motor has', 60, null],
  ['just as much', 24.4, null],
  ['less', 23, 'doubtful'],
  ['half', 12.2, 'doubtful'],
  ['less than half', 12.1, 'wrong'],
])('%s', (_, maxTorqueNm, grade) => {
  expect(of(maxTorqueNm, sheet)?.grade ?? null).toBe(grade);
});

test('the sum is shown', () => {
  expect(of(10, sheet)).toMatchObject({
    field: 'coupling.maxTorqueNm',
    expected: 24.4,
    says: '9549 × 7.5 kW / 2940 rpm = 24.4 N·m of M-1; the coupling or gear is told to carry 10 N·m.',
  });
});

test.each([
  ['no limit', of(null)],
  ['no power', of(1, row({ hp: null }))],
  ['no speed', of(1, row({ rpm: null }))],
  ['no row for the supply', of(1, {}, { volts: 230 })],
  ['no motor', couplingTorque(set({ coupling: { maxTorqueNm: 1 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
