import { expect, test } from 'vitest';
import { supplyHertz } from '@/lib/plausibility/set/supply-hertz';
import { set } from '../../matching/easy';
import { inSet, onDrive, row } from '../in-set';

// Volts over hertz: a 460 V 60 Hz motor on 415 V 50 Hz sees 8.3 for 7.67 (read in one text), 1.08 of it.
test.each([
  ['a row for it', { supply: { volts: 460, hertz: 60 } }, {}, null],
  ['none, the flux nearly kept', { supply: { volts: 415, hertz: 50 } }, {}, 'doubtful'],
  ['none, half the flux', { supply: { volts: 230, hertz: 60 } }, row({ volts: 400, hertz: 50 }), 'wrong'],
  ['none, the flux just kept', { supply: { volts: 460, hertz: 50 } }, {}, 'doubtful'],
  ['none, too much flux', { supply: { volts: 480, hertz: 50 } }, {}, 'wrong'],
  ['none, volts not known', { supply: { volts: null, hertz: 50 } }, {}, 'doubtful'],
  ['a drive is set to any hertz', onDrive({ outputVolts: 460, baseHertz: 120 }), {}, 'doubtful'],
  ['the input of a drive does not reach the motor', onDrive({}, { hertz: 50 }), {}, null],
] as const)('%s', (_, ofSet, ofMotor, grade) => {
  expect(inSet(supplyHertz, ofSet, ofMotor)?.grade ?? null).toBe(grade);
});

test('the flux is shown', () => {
  expect(inSet(supplyHertz, { supply: { volts: 415, hertz: 50 } })).toMatchObject({
    field: 'supply.hertz',
    expected: '60',
    says: 'Fed with 50 Hz; the plate of M-1 is for 60 Hz; volts over hertz are 1.08 of the plate’s.',
  });
});

test('on a drive the field is the drive’s', () => {
  expect(inSet(supplyHertz, onDrive({ baseHertz: 50 }))?.field).toBe('supply.drive.baseHertz');
  expect(inSet(supplyHertz, onDrive({ baseHertz: null }, { hertz: 50 }))?.field).toBe('supply.hertz');
});

test.each([
  ['no hertz told', inSet(supplyHertz, { supply: { hertz: null } })],
  ['a row without hertz', inSet(supplyHertz, { supply: { hertz: 50 } }, row({ hertz: null }))],
  ['no row', inSet(supplyHertz, { supply: { hertz: 50 } }, { ratings: [] })],
  ['no motor', supplyHertz(set({ supply: { hertz: 50 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
