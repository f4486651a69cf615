import { expect, test } from 'vitest';
import { start } from '@/lib/review/supply/start';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

const inDelta = { ...row({ connection: 'delta' }), leads: 6, winding: 'star-delta-6' } as const;
const star = (breakawayPct: number | null, ofMotor: object = {}) =>
  start(inPlace({ supply: { start: 'star-delta' }, load: { breakawayPct } }, { ...inDelta, ...ofMotor }));

test('started direct, a usual motor breaks its pump away', () => {
  expect(start(inPlace())).toBeNull();
});

test('in star a third of the torque is left: too little for a rotary pump', () => {
  // Torque in star is a third (read in two texts). 200 % plated of 20.35 N·m are 40.7, in star 13.6 N·m; the duty of
  // 16.92 N·m asks 110 %: 18.6 N·m.
  const found = star(110, { lockedRotorPct: 200 });
  expect(found).toMatchObject({ urgency: 'plan', unit: 'N·m', rule: 'start' });
  expect(found?.have).toBeCloseTo((20.35 * 2) / 3, 1);
  expect(found?.need).toBeCloseTo(16.92 * 1.1, 1);
  expect(found?.says).toMatch(/^Started in star\. .*it would not start/);
});

test('what the pump asks at rest is measured before a start in star is trusted', () => {
  expect(star(null)).toMatchObject({ urgency: 'look', reading: expect.stringContaining('Breakaway torque') });
});

test('a soft starter whose current is held too low', () => {
  // Torque falls with the square of the current (read in one text).
  const soft = (softStartLimitPct: number) =>
    start(inPlace({ supply: { start: 'soft', softStartLimitPct } }, { lockedRotorPct: 200 }));
  expect(soft(250)).toMatchObject({ urgency: 'plan' });
  expect(soft(600)).toBeNull();
});

test('a capacitor behind a drive is taken off at once', () => {
  const found = start(inPlace(onDrive({ minHertz: 30, maxHertz: 60 }, { supply: { capacitorKvar: 2 } }), FOR_DRIVE));
  expect(found).toMatchObject({ urgency: 'at-once' });
  expect(found?.says).toContain('No capacitor may stay at a motor on a drive');
});

test('a winding whose ends are not brought out cannot start in star', () => {
  // Nine leads do not bring out both ends of each phase: lead tables (read in one text).
  const nine = start(
    inPlace({ supply: { start: 'star-delta', directAllowed: false } }, { leads: 9, winding: 'star-9' }),
  );
  expect(nine).toMatchObject({ urgency: 'at-once' });
});

test.each([
  ['where the pump’s breakaway is not told and the start is direct', inPlace({ load: { breakawayPct: null } })],
  [
    'of a quadratic load in star',
    inPlace({ supply: { start: 'star-delta' }, load: { kind: 'quadratic', breakawayPct: null } }, inDelta),
  ],
])('says nothing %s', (_, asked) => {
  expect(start(asked)).toBeNull();
});
