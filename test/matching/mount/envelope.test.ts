import { expect, test } from 'vitest';
import { envelope } from '@/lib/matching/criteria/mount/envelope';
import { asked } from './asked';

// The easy motor is 390 mm long. No frame fixes the overall length.
test.each([
  ['shorter', 400, {}, 'ok'],
  ['just as long', 390, {}, 'ok'],
  ['longer', 389, {}, 'block'],
  ['unknown', 400, { lengthMm: null }, 'check'],
] as const)('envelope: %s', (_, maxLengthMm, ofMotor, grade) => {
  expect(asked(envelope, { base: { maxLengthMm } }, ofMotor)?.grade).toBe(grade);
});

test('an envelope is not asked when the set states no room', () => {
  expect(asked(envelope, {}, { lengthMm: null })).toBeNull();
});
