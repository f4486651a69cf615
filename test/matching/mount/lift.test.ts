import { expect, test } from 'vitest';
import { lift } from '@/lib/matching/criteria/mount/lift';
import { asked } from './asked';

// The easy motor weighs 41 kg. No frame fixes the mass.
test.each([
  ['lighter', 50, {}, 'ok'],
  ['just as heavy', 41, {}, 'ok'],
  ['heavier', 40, {}, 'block'],
  ['unknown', 50, { massKg: null }, 'check'],
] as const)('lift: %s', (_, maxMassKg, ofMotor, grade) => {
  expect(asked(lift, { base: { maxMassKg } }, ofMotor)?.grade).toBe(grade);
});

test('a lift is not asked when the set states no limit', () => {
  expect(asked(lift, {}, { massKg: null })).toBeNull();
});
