import { expect, test } from 'vitest';
import { phases } from '@/lib/plausibility/motor/phases';
import { withRow } from '../row';

const of = (rest: Parameters<typeof withRow>[1], row = {}) => phases(withRow(row, { winding: null, ...rest }));

// NEC Table 430.248 ends at 10 hp (read in two texts).
test.each([
  ['1 phase, 5 hp', { phases: 1 }, { hp: 5 }, null],
  ['1 phase, 10 hp', { phases: 1 }, { hp: 10 }, null],
  ['1 phase, 7.5 kW, which is 10 hp', { phases: 1 }, { hp: null, kw: 7.5 }, null],
  ['1 phase, 15 hp', { phases: 1 }, { hp: 15 }, 'doubtful'],
  ['3 phases, 15 hp', { phases: 3 }, { hp: 15 }, null],
  ['a single-phase motor with 1 phase', { phases: 1, kind: 'single-phase' }, {}, null],
  ['a single-phase motor with 3', { phases: 3, kind: 'single-phase' }, {}, 'wrong'],
  ['1 phase in a three-phase winding', { phases: 1, winding: 'star-9' }, {}, 'wrong'],
] as const)('%s', (_, rest, row, grade) => {
  expect(of(rest, row)?.grade ?? null).toBe(grade);
});

test('the sum is shown', () => {
  expect(of({ phases: 1 }, { hp: 15 })?.says).toBe('1 phase at 11.19 kW = 15 hp: single-phase motors end at 10 hp.');
});

test('is silent without phases, and without a power', () => {
  expect(of({ phases: null, kind: 'single-phase' })).toBeNull();
  expect(of({ phases: 1 }, { hp: null })).toBeNull();
});
