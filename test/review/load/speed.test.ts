import { expect, test } from 'vitest';
import { speed } from '@/lib/review/load/speed';
import { FOR_DRIVE, inPlace, onDrive } from '../in-place';

const belt = (ratio: number) => ({ type: 'belt', ratio, sheave: { pitchDiameterMm: 120 } }) as const;

test('as fast as told, below its limit: nothing', () => {
  expect(speed(inPlace({ load: { maxPumpRpm: 1900 } }))).toBeNull();
});

test('a pump turned faster than it may is put right at once', () => {
  // 1750 / 2 = 875 rpm: speeds follow the sheaves.
  const found = speed(inPlace({ load: { atPumpRpm: 800, maxPumpRpm: 820 }, coupling: belt(2) }));
  expect(found).toMatchObject({ urgency: 'at-once', need: 820, unit: 'rpm' });
  expect(found?.have).toBeCloseTo(876, 0);
  expect(found?.difference).toBeCloseTo(56, 0);
});

test('a speed asked that is above the limit told is told as such', () => {
  expect(speed(inPlace({ load: { maxPumpRpm: 1700 } }))?.says).toContain('above its own maximum');
});

test('off the speed told by more than the flow may change is planned', () => {
  const found = speed(inPlace({ load: { atPumpRpm: 780 }, coupling: belt(2.1) }));
  expect(found).toMatchObject({ urgency: 'plan', need: 780 });
});

test('a drive whose upper limit lets the pump run too fast', () => {
  // In step 65 Hz turn four poles at 120 × 65 / 4 = 1950 rpm; less the slip of about 50 that is 1900: n = 120 f/p.
  const asked = (maxHertz: number) =>
    speed(inPlace(onDrive({ minHertz: 30, maxHertz }, { load: { maxPumpRpm: 1900 } }), { ...FOR_DRIVE, maxRpm: 3600 }));
  expect(asked(64)).toBeNull();
  const found = asked(75);
  expect(found).toMatchObject({ urgency: 'plan', have: 75, unit: 'Hz' });
  expect(found?.need).toBeCloseTo(65, 0);
  expect(found?.says).toContain('The drive may go up to 75 Hz.');
});

test.each([
  ['of a limit nobody told', inPlace(onDrive({ minHertz: 30, maxHertz: 75 }), FOR_DRIVE)],
  ['of what only the motor may not', inPlace(onDrive({ minHertz: 30, maxHertz: 90 }), { ...FOR_DRIVE, maxRpm: 2000 })],
  ['where no speed is told', inPlace({ load: { atPumpRpm: null } })],
])('says nothing %s', (_, asked) => {
  expect(speed(asked)).toBeNull();
});
