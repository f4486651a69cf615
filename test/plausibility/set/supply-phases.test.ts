import { expect, test } from 'vitest';
import { supplyPhases } from '@/lib/plausibility/set/supply-phases';
import { set } from '../../matching/easy';
import { inSet, onDrive } from '../in-set';

test.each([
  ['three on three', { supply: { phases: 3 } }, 3, null],
  ['three on one', { supply: { phases: 1 } }, 3, 'supply.phases'],
  ['one on three', { supply: { phases: 3 } }, 1, 'supply.phases'],
  ['three on a drive fed with one', onDrive({}, { phases: 1 }), 3, null],
  ['one on a drive', onDrive(), 1, 'supply.start'],
  ['nobody told the supply', { supply: { phases: null } }, 3, null],
  ['nobody told the motor', { supply: { phases: 1 } }, null, null],
] as const)('%s', (_, ofSet, phases, field) => {
  const doubt = inSet(supplyPhases, ofSet, { phases });
  expect(doubt?.field ?? null).toBe(field);
  expect(doubt?.grade ?? 'wrong').toBe('wrong');
});

test('it says both', () => {
  expect(inSet(supplyPhases, { supply: { phases: 1 } })?.says).toBe(
    'The supply has 1 phase; M-1 in it has 3 on its plate.',
  );
});

test('is silent without a motor', () => {
  expect(supplyPhases(set({ supply: { phases: 1 } }), null)).toBeNull();
});
