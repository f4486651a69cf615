import { expect, test } from 'vitest';
import { driveDuty } from '@/lib/review/supply/drive-duty';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

const on = (drive: object, ofMotor: object = {}, volts = 460) =>
  driveDuty(
    inPlace(onDrive({ minHertz: 30, maxHertz: 60, outputVolts: volts, ...drive }), {
      constantTorqueRange: 4,
      ...ofMotor,
    }),
  );

test('a motor declared for it suits', () => {
  expect(on({}, FOR_DRIVE)).toBeNull();
});

test('one that is not, at 460 V, is to be planned for, though it has stood so far', () => {
  // A usual winding stands 1000 V: NEMA MG 1 Part 30 (read in one text). Twice the DC link is 2 × √2 × 460 = 1301 V.
  const found = on({ cableM: 60 });
  expect(found).toMatchObject({ urgency: 'plan', have: 'none' });
  expect(found?.says).toContain('1301 V');
  expect(found?.says).not.toContain('failed motor');
});

test.each([
  ['a filter takes the peaks', { filter: true }, {}, 460],
  // Up to 250 V the peaks stay under 1000 V: 2 × √2 × 230 = 651 V.
  ['at 230 V they stay low', {}, row({ volts: 230, amps: 13.2 }), 230],
] as const)('%s', (_, drive, ofMotor, volts) => {
  expect(on(drive, ofMotor, volts)).toBeNull();
});

test('where the duty is not read, it is looked for', () => {
  expect(on({}, { driveDuty: null })).toMatchObject({
    urgency: 'look',
    reading: expect.stringContaining('inverter duty'),
  });
});

test('slower than its declared range', () => {
  // 60 Hz over 10 Hz is 6:1.
  expect(on({ minHertz: 10 }, { driveDuty: 'inverter' })).toMatchObject({
    urgency: 'plan',
    have: 4,
    need: 6,
    difference: -2,
  });
  expect(on({ minHertz: 15 }, { driveDuty: 'inverter' })).toBeNull();
});

test('faster than it may turn is put right at once', () => {
  // 120 × 90 / 4 = 2700 rpm.
  expect(on({ maxHertz: 90 }, { driveDuty: 'inverter', maxRpm: 2400 })).toMatchObject({
    urgency: 'at-once',
    have: 2400,
    need: 2700,
  });
});

test('is not asked on the mains', () => {
  expect(driveDuty(inPlace())).toBeNull();
});
