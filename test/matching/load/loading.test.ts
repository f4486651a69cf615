import { expect, test } from 'vitest';
import { loading } from '@/lib/matching/criteria/load/loading';
import { motor, set } from '../easy';
import { asked } from './asked';

const drive = { start: 'drive' as const, volts: 460, drive: { outputVolts: 460, baseHertz: 60 } };

test.each([
  ['83 %', {}, {}, 'ok'],
  ['41 %', { load: { shaftKw: 1.52 } }, {}, 'ok'],
  ['38 %', { load: { shaftKw: 1.4 } }, {}, 'note'],
  ['5 %, below any printed figure', { load: { shaftKw: 0.2 } }, {}, 'note'],
  ['load unknown: not asked', { load: { shaftKw: null } }, {}, null],
  ['gear losses unknown: not asked', { coupling: { type: 'gear', ratio: 1 } }, {}, null],
  [
    'full torque at a third of the speed on a drive',
    { supply: drive, load: { shaftKw: 1.033, atPumpRpm: 583 } },
    {},
    'ok',
  ],
  ['a third of the torque on a drive', { supply: drive, load: { shaftKw: 1.2 } }, {}, 'note'],
] as const)('loading: %s', (_, differs, plated, grade) => {
  expect(asked(loading, set(differs), motor(plated))?.grade ?? null).toBe(grade);
});

test('an oversized motor is told its cost: power factor falls sooner than efficiency (DOE fact sheet, read in one text)', () => {
  const says = asked(loading, set({ load: { shaftKw: 1.2 } }), motor())?.says;
  // 6.6·√((0.82·0.328)² + (0.5724·0.777)²) = 3.43 A; the efficiency of 3.73 kW lies between those printed
  // for 2.5 and 7.5 kW: 0.862·0.895; 1223 W over √3·460·3.43·0.771 is 0.58.
  expect(says).toMatch(/Oversized: loaded to 33 %.*power factor about 0\.58\b/);
  expect(says).toMatch(/efficiency about \d+ % below its best/);
});
