import { expect, test } from 'vitest';
import { oversized } from '@/lib/review/load/oversized';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

// A smaller motor is worth a look below about 40 % of load: common practice, no source; motors are made for 50 to 100 %
// (DOE fact sheet, read in one text). 5 hp is 3.728 kW, 40 % of it 1.49 kW.
test.each([
  ['at 41 %', 1.52, null],
  ['at 38 %', 1.4, 'next-time'],
  ['at 12 %', 0.45, 'next-time'],
] as const)('%s', (_, shaftKw, urgency) => {
  expect(oversized(inPlace({ load: { shaftKw } }))?.urgency ?? null).toBe(urgency);
});

test('on a drive it is the torque that tells', () => {
  // Half the speed at the same torque is half the power: T = 9550 P/n (read in two texts).
  const slow = (shaftKw: number) =>
    oversized(inPlace(onDrive({ minHertz: 30, maxHertz: 60 }, { load: { shaftKw, atPumpRpm: 875 } }), FOR_DRIVE));
  expect(slow(0.9)).toBeNull();
  expect(slow(0.6)?.says).toContain('32 % of its rated torque');
});

test('the load and the rating stand in the sentence', () => {
  expect(oversized(inPlace({ load: { shaftKw: 1 } }))?.says).toMatch(/kW at the motor: 2[78] % of 3\.73 kW\./);
});

test.each([
  ['without a load', inPlace({ load: { shaftKw: null } })],
  ['without a rating', inPlace({ load: { shaftKw: 1 } }, row({ hp: null }))],
  ['through a gear whose losses nobody told', inPlace({ load: { shaftKw: 1 }, coupling: { type: 'gear' } })],
])('says nothing %s', (_, asked) => {
  expect(oversized(asked)).toBeNull();
});
