import { expect, test } from 'vitest';
import { serviceFactor } from '@/lib/review/load/service-factor';
import { FOR_DRIVE, inPlace, onDrive, row } from '../in-place';

// A 10 hp motor of service factor 1.15 carries 11.5 hp (a worked example, read in one text); 10 hp is 7.457 kW.
const tenHp = row({ hp: 10, rpm: 1760, amps: 12.6 });
test.each([
  ['at its rating', 7.45, null],
  ['a tenth above it', 8.2, 'plan'],
  ['at 11.4 hp', 8.5, 'plan'],
  ['at 11.8 hp, beyond it', 8.8, null],
] as const)('%s', (_, shaftKw, urgency) => {
  expect(serviceFactor(inPlace({ load: { shaftKw } }, tenHp))?.urgency ?? null).toBe(urgency);
});

test('the sentence has the share, the factor and what it comes to', () => {
  const found = serviceFactor(inPlace({ load: { shaftKw: 8.2 } }, tenHp));
  expect(found?.says).toMatch(
    /= 8\.23 kW at the motor: 110 % of 7\.46 kW, inside its service factor of 1\.15 \(8\.58 kW\)/,
  );
  expect(found?.cite).toContain('14.37');
});

test('other figures make another finding', () => {
  const figuresOf = (shaftKw: number) => serviceFactor(inPlace({ load: { shaftKw } }, tenHp))?.figures;
  expect(figuresOf(8.2)).toBe(figuresOf(8.2));
  expect(figuresOf(8.2)).not.toBe(figuresOf(8.3));
});

test.each([
  ['without a load', inPlace({ load: { shaftKw: null } }, tenHp)],
  ['where none is printed', inPlace({ load: { shaftKw: 8.2 } }, { ...tenHp, serviceFactor: null })],
  // No service factor on a drive: from memory.
  [
    'on a drive',
    inPlace(onDrive({ ratedA: 20, minHertz: 30, maxHertz: 60 }, { load: { shaftKw: 8.2 } }), {
      ...tenHp,
      ...FOR_DRIVE,
    }),
  ],
  ['where heat alone leads into it', inPlace({ load: { shaftKw: 7.4 }, surroundings: { ambientC: 50 } }, tenHp)],
])('says nothing %s', (_, asked) => {
  expect(serviceFactor(asked)).toBeNull();
});
