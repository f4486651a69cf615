import { expect, test } from 'vitest';
import { driveSuitability } from '@/lib/matching/criteria/supply/drive-suitability';
import { frequency } from '@/lib/matching/criteria/supply/frequency';
import { fullLoadCurrent } from '@/lib/matching/criteria/supply/full-load-current';
import { phases } from '@/lib/matching/criteria/supply/phases';
import { starting } from '@/lib/matching/criteria/supply/starting';
import { voltage } from '@/lib/matching/criteria/supply/voltage';
import { motor, set } from '../easy';
import { asked } from './asked';

test('the failed motor’s twin passes every question of the supply', () => {
  for (const ask of [phases, voltage, frequency, starting, fullLoadCurrent])
    expect(asked(ask, set(), motor())?.grade).toBe('ok');
  expect(asked(driveSuitability, set(), motor())).toBeNull();
});

// Unknown is never a pass: what the physics always has, and what the set states.
test.each([
  ['phases', phases, { phases: null }],
  ['volts', voltage, { ratings: [{ hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] }],
  ['hertz', frequency, { ratings: [{ volts: 460, hp: 5, rpm: 1750, amps: 6.6 }] }],
  ['amps', fullLoadCurrent, { ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }] }],
] as const)('%s unknown asks for a reading', (_, ask, differs) => {
  const found = asked(ask, set(), motor(differs as object));
  expect(found).toMatchObject({ grade: 'check', by: 'reading' });
  expect(found?.reading).toMatch(/\(\d+ min\)$/);
});
