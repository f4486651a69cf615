import { expect, test } from 'vitest';
import { driveTorque } from '@/lib/review/load/drive-torque';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

const on = (drive: object, load: object = {}, ofMotor: object = FOR_DRIVE) =>
  driveTorque(inPlace(onDrive(drive, { load }), ofMotor));

test('inside its range and below base frequency there is torque enough', () => {
  expect(on({ minHertz: 10, maxHertz: 60 })).toBeNull();
});

test('above base frequency torque falls as base over frequency', () => {
  // From memory: at 90 Hz of 60 two thirds are left, 20.35 × 2/3 = 13.6 N·m of 5 hp at 1750 rpm.
  const found = on({ minHertz: 30, maxHertz: 90 });
  expect(found).toMatchObject({ urgency: 'plan', unit: 'N·m' });
  expect(found?.have).toBeCloseTo((20.35 * 2) / 3, 1);
  expect(on({ minHertz: 30, maxHertz: 70 })).toBeNull();
});

test('a fan-cooled motor carries less at low speed', () => {
  // Guidance curve, from memory: 0.85 at half speed, 0.65 at a quarter. The duty asks 83 % of rated torque.
  const ofNoRange = { driveDuty: 'inverter' };
  expect(on({ minHertz: 30, maxHertz: 60 }, {}, ofNoRange)).toBeNull();
  expect(on({ minHertz: 15, maxHertz: 60 }, {}, ofNoRange)).toMatchObject({ urgency: 'plan' });
  expect(on({ minHertz: 15, maxHertz: 60 }, {}, { ...ofNoRange, constantTorqueRange: 4 })).toBeNull();
});

test('a load above its rated torque at the speed set is put right at once', () => {
  expect(on({ minHertz: 30, maxHertz: 60 }, { shaftKw: 4.2 })).toMatchObject({ urgency: 'at-once' });
});

test('without its rated speed the plate is read first', () => {
  expect(on({ minHertz: 30, maxHertz: 60 }, {}, { ...FOR_DRIVE, ...row({ rpm: null, hp: null }) })).toMatchObject({
    urgency: 'look',
    reading: expect.stringContaining('plate'),
  });
});

test.each([
  ['on the mains', inPlace({ load: { shaftKw: 9 } })],
  ['without a load', inPlace(onDrive({ maxHertz: 90 }, { load: { shaftKw: null } }), FOR_DRIVE)],
])('says nothing %s', (_, asked) => {
  expect(driveTorque(asked)).toBeNull();
});
