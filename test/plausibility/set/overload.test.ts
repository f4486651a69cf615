import { expect, test } from 'vitest';
import { overload } from '@/lib/plausibility/set/overload';
import { set } from '../../matching/easy';
import { inSet, onDrive, row } from '../in-set';

const of = (
  overloadMinA: number | null,
  overloadMaxA: number | null,
  more: object = {},
  ofMotor: Parameters<typeof inSet>[2] = {},
) => inSet(overload, { supply: { overloadMinA, overloadMaxA, ...more } }, ofMotor);

// The plate says 6.6 A. NEC 430.32(A)(1) (read in two texts): 125 % with a service factor of 1.15, 8.25 A; else 115 %, 7.59 A.
test.each([
  ['around the plate', 5, 9, {}, null],
  ['just up to it', 4, 6.6, {}, null],
  ['a twentieth short', 4, 6.27, {}, null],
  ['less', 4, 6.2, {}, 'doubtful'],
  ['half of it', 2, 3.3, {}, 'doubtful'],
  ['less than half', 2, 3.2, {}, 'wrong'],
  ['from it upward', 6.9, 11, {}, null],
  ['from above it', 7, 11, {}, 'doubtful'],
  ['from what the code allows', 8.25, 13, {}, 'doubtful'],
  ['from above that', 8.3, 13, {}, 'wrong'],
  ['the same without a service factor', 7.6, 13, { serviceFactor: null }, 'wrong'],
] as const)('%s', (_, from, to, ofMotor, grade) => {
  expect(of(from, to, {}, ofMotor)?.grade ?? null).toBe(grade);
});

test('in a phase leg of star-delta 0.58 of the amps count', () => {
  expect(of(3, 5, { overloadIn: 'phase', start: 'star-delta' })).toBeNull();
  expect(of(5, 9, { overloadIn: 'phase', start: 'star-delta' })).toMatchObject({
    field: 'supply.overloadMinA',
    expected: 3.81,
  });
});

test('dial and plate are shown', () => {
  expect(of(2, 5)?.says).toBe(
    'The plate of M-1 gives 6.6 A, and the dial goes from 2 to 5 A: at its highest it trips below full load.',
  );
});

test.each([
  ['no dial told', of(null, null)],
  ['no amps', of(1, 2, {}, row({ amps: null }))],
  ['no row for the supply', of(1, 2, { volts: 230 })],
  ['a drive', inSet(overload, onDrive({}, { overloadMinA: 1, overloadMaxA: 2 }))],
  ['no motor', overload(set({ supply: { overloadMinA: 1, overloadMaxA: 2 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
