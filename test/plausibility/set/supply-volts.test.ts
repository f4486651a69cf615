import { expect, test } from 'vitest';
import { supplyVolts } from '@/lib/plausibility/set/supply-volts';
import { set } from '../../matching/easy';
import { inSet, onDrive, row } from '../in-set';

// NEC Table 430.250: 460 V motors belong to 480 V systems (read in one text). NEMA MG 1-12.44: 10 % either way (read in one text).
test.each([
  ['the same', 460, {}, null],
  ['the system of the plate', 480, {}, null],
  ['208 on 200', 208, row({ volts: 200 }), null],
  ['208 on 230', 208, row({ volts: 230 }), null],
  ['10 % above', 506, {}, null],
  ['more', 507, {}, 'doubtful'],
  ['10 % below', 414, {}, null],
  ['less', 413, {}, 'doubtful'],
  ['25 % below', 345, {}, 'doubtful'],
  ['half', 230, {}, 'wrong'],
  ['within a range', 220, row({ volts: null, voltsMin: 208, voltsMax: 230 }), null],
  ['600 on 460', 600, {}, 'doubtful'],
] as const)('%s', (_, volts, ofMotor, grade) => {
  expect(inSet(supplyVolts, { supply: { volts } }, ofMotor)?.grade ?? null).toBe(grade);
});

test('the nearest row counts', () => {
  const both = { ratings: [230, 460].map((volts) => ({ volts, hertz: 60, hp: 5 })) };
  expect(inSet(supplyVolts, { supply: { volts: 240 } }, both)).toBeNull();
  expect(inSet(supplyVolts, { supply: { volts: 380 } }, both)).toMatchObject({ expected: 460, field: 'supply.volts' });
});

test('a drive’s output counts, and it can be set', () => {
  expect(inSet(supplyVolts, onDrive({ outputVolts: 460 }, { volts: 600 }))).toBeNull();
  expect(inSet(supplyVolts, onDrive({ outputVolts: 230 }))).toMatchObject({
    grade: 'doubtful',
    field: 'supply.drive.outputVolts',
  });
});

test('the share is shown', () => {
  expect(inSet(supplyVolts, { supply: { volts: 400 } })?.says).toBe(
    '400 V on a plate of 460 V: 13 % below the nearest row of M-1, where 10 % is allowed.',
  );
});

test.each([
  ['no volts told', inSet(supplyVolts, { supply: { volts: null } })],
  ['no row at these hertz', inSet(supplyVolts, { supply: { volts: 230, hertz: 50 } })],
  ['no volts on the plate', inSet(supplyVolts, { supply: { volts: 230 } }, row({ volts: null }))],
  ['no motor', supplyVolts(set({ supply: { volts: 230 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
