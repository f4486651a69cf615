import { expect, test } from 'vitest';
import type { PerPhase } from '@/lib/energy/measured';
import { currents } from '@/lib/review/supply/currents';
import { inPlace } from '../in-place';

const read = (...amps: [...PerPhase]) => currents(inPlace({}, {}, { amps, spares: null }));

test('nobody read them, or not all three: not asked', () => {
  expect(read(null, null, null)).toBeNull();
  expect(read(6.1, null, 6.4)).toBeNull();
});

test.each([
  [[6, 6, 6], null],
  // The limit of 10 % is common practice (read in two texts): mean 6, greatest deviation 0.6.
  [[6.6, 5.7, 5.7], null],
  // Mean 6, greatest deviation 0.9: 15 %, as NEMA MG 1 14.36 works it out for volts.
  [[6.9, 5.5, 5.6], 15],
] as const)('%j A', (amps, pct) => {
  const [a, b, c] = amps;
  const found = read(a, b, c);
  if (pct === null) expect(found).toBeNull();
  else expect(found).toMatchObject({ urgency: 'look', have: pct, need: 10, unit: '%', difference: 5 });
});

test('a line that carries nothing is to be seen to at once', () => {
  // Mean 4, L2 is 100 % off it: single-phasing.
  expect(read(6, 0, 6)).toMatchObject({
    urgency: 'at-once',
    have: 100,
    says: expect.stringContaining('L2 carried nothing'),
  });
});

test('of two lines that carry nothing both are named', () => {
  // Mean 2, L1 is 200 % off it.
  expect(read(6, 0, 0)).toMatchObject({
    urgency: 'at-once',
    says: expect.stringContaining('L2 and L3 carried nothing'),
  });
});

test('of a single-phase motor or supply it is not asked', () => {
  const known = { amps: [9, 0, 9], spares: null } as const;
  expect(currents(inPlace({}, { phases: 1 }, known))).toBeNull();
  expect(currents(inPlace({ supply: { phases: 1 } }, {}, known))).toBeNull();
});

test('other amps are another finding', () => {
  expect(read(6.9, 5.5, 5.6)?.figures).not.toBe(read(6.9, 5.6, 5.5)?.figures);
});
