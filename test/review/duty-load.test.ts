import { expect, test } from 'vitest';
import { runningOf } from '@/lib/energy/running-of';
import { dutyLoadPct } from '@/lib/review/duty-load';
import { inPlace, row } from './in-place';

// 5 hp is 3.728 kW.
test.each([
  ['where motor and load meet, a little above its plate speed', inPlace({ load: { shaftKw: 1.864 } }), 51],
  ['as told, where the load is beyond what the motor’s line tells', inPlace({ load: { shaftKw: 7.457 } }), 200],
  ['not known without a load', inPlace({ load: { shaftKw: null } }), null],
  ['not known without a rating', inPlace({ load: { shaftKw: 7.457 } }, row({ hp: null })), null],
  [
    'not known through a gear of unknown losses',
    inPlace({ load: { shaftKw: 7.457 }, coupling: { type: 'gear' } }),
    null,
  ],
] as const)('the load is %s', (_, asked, pct) => {
  const found = dutyLoadPct(asked, runningOf(asked.set, asked.motor, asked.by.settings));
  expect(found === null ? null : Math.round(found)).toBe(pct);
});
