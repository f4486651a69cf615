import { expect, test } from 'vitest';
import { overloaded } from '@/lib/review/load/overloaded';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

// 5 hp is 3.728 kW; with a service factor of 1.15 it carries 4.288 kW: NEMA MG 1 12.51 and 14.37 (read in two texts).
test.each([
  ['within the rating', 3.7, null],
  ['within 2 % of it nobody can tell', 3.78, 'look'],
  ['in the service factor is another question', 4.2, null],
  ['beyond the service factor', 4.4, 'at-once'],
] as const)('%s', (_, shaftKw, urgency) => {
  expect(overloaded(inPlace({ load: { shaftKw } }))?.urgency ?? null).toBe(urgency);
});

test('a motor without a service factor is overloaded as soon as its rating is', () => {
  const found = overloaded(inPlace({ load: { shaftKw: 4 } }, { serviceFactor: 1 }));
  expect(found).toMatchObject({ urgency: 'at-once', unit: 'kW' });
  expect(found?.says).not.toContain('service factor');
});

test('the sum, the losses of a belt in it, stands in the sentence', () => {
  // 95 %: common practice, no source (design of the engine).
  const belt = { type: 'belt', ratio: 2, sheave: { pitchDiameterMm: 120 } } as const;
  const found = overloaded(inPlace({ load: { shaftKw: 4.2, atPumpRpm: 875 }, coupling: belt }));
  expect(found?.says).toMatch(/\/ 0\.95 = 4\.4 kW at the motor: 118 % of the 3\.73 kW/);
  expect(found?.difference).toBeCloseTo((found?.have as number) - (found?.need as number), 3);
});

test('high above the sea the service factor may not be leaned on', () => {
  // NEMA MG 1 14.4: from memory. A load above the plate itself is no matter of the height alone.
  const found = overloaded(inPlace({ load: { shaftKw: 4 }, surroundings: { altitudeM: 2000, ambientC: 40 } }));
  expect(found?.says).toContain('its service factor of 1.15 may not be leaned on here');
});

test.each([
  ['without a load', inPlace({ load: { shaftKw: null } })],
  ['without a rating', inPlace({ load: { shaftKw: 9 } }, row({ hp: null }))],
  ['where heat alone makes it too much', inPlace({ load: { shaftKw: 3.6 }, surroundings: { ambientC: 50 } })],
  [
    'on a drive, where torque is the question',
    inPlace(onDrive({ minHertz: 30, maxHertz: 60 }, { load: { shaftKw: 4.4 } }), FOR_DRIVE),
  ],
])('says nothing %s', (_, asked) => {
  expect(overloaded(asked)).toBeNull();
});
