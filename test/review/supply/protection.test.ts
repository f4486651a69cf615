import { expect, test } from 'vitest';
import { protection } from '@/lib/review/supply/protection';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

const on = (supply: object, ofMotor: object = {}) => protection(inPlace({ supply }, ofMotor));

test.each([
  // The overload is set by the plate: NEC 430.6(A) (read in two texts). The easy plate shows 6.6 A.
  ['a dial that reaches the plate’s amps', { overloadMinA: 5, overloadMaxA: 9 }, null],
  ['one that ends below them', { overloadMinA: 3, overloadMaxA: 5 }, 'plan'],
  ['one that begins above them', { overloadMinA: 8, overloadMaxA: 12 }, 'plan'],
  // Common practice, no source.
  ['a contactor for less', { contactorA: 6 }, 'at-once'],
  // 125 %: NEC 430.22 (from memory). 1.25 × 6.6 = 8.25 A.
  ['a cable that carries 8.3 A', { cableA: 8.3 }, null],
  ['a cable that carries 8.2 A', { cableA: 8.2 }, 'plan'],
  ['one end of the dial not told', { overloadMinA: null, overloadMaxA: 9 }, 'look'],
] as const)('%s', (_, supply, urgency) => {
  expect(on(supply)?.urgency ?? null).toBe(urgency);
});

test('a plate without amps is read', () => {
  expect(on({}, row({ amps: null }))).toMatchObject({ urgency: 'look', reading: expect.stringContaining('amps') });
});

test('a drive too small for what it feeds', () => {
  const drive = (ratedA: number) =>
    protection(
      inPlace(
        onDrive({ ratedA, minHertz: 30, maxHertz: 60 }, { supply: { contactorA: null, cableA: null } }),
        FOR_DRIVE,
      ),
    );
  expect(drive(6.6)).toBeNull();
  expect(drive(5)).toMatchObject({ urgency: 'at-once', need: 5, unit: 'A' });
});

test('is not asked where the set states none of them', () => {
  const nothing = { overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null };
  expect(on(nothing)).toBeNull();
});
