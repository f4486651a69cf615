import { expect, test } from 'vitest';
import { driveServiceFactor } from '@/lib/plausibility/set/drive-service-factor';
import { set } from '../../matching/easy';
import { inSet, onDrive, row } from '../in-set';

const of = (shaftKw: number | null, ofMotor: Parameters<typeof inSet>[2] = {}, ofSet = onDrive()) =>
  inSet(driveServiceFactor, { ...ofSet, load: { shaftKw } }, ofMotor);

// 5 hp is 3.73 kW; with 1.15 it is 4.29 kW. On a drive the factor is 1.0 (from memory); a twentieth is measured away.
test.each([
  ['a service factor alone is no doubt', 3.7, {}, null],
  ['a twentieth above the rating', 3.9, {}, null],
  ['into the service factor', 4.2, {}, 'doubtful'],
  ['beyond it, which is the rule of the load', 4.6, {}, null],
  ['no service factor to lean on', 4.2, { serviceFactor: 1 }, null],
] as const)('%s', (_, shaftKw, ofMotor, grade) => {
  expect(of(shaftKw, ofMotor)?.grade ?? null).toBe(grade);
});

test('the sum is shown', () => {
  expect(of(4.2)?.says).toBe(
    '4.2 kW at the pump = 4.2 kW at the motor, 1.13 times the 3.73 kW of M-1: its service factor of 1.15 is not there on a drive.',
  );
});

test.each([
  ['the mains', of(4.2, {}, {})],
  ['no load', of(null)],
  ['no power', of(4.2, row({ hp: null }))],
  ['no service factor', of(4.2, { serviceFactor: null })],
  ['no motor', driveServiceFactor(set({ ...onDrive(), load: { shaftKw: 4.2 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
