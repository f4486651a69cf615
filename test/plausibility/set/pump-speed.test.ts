import { expect, test } from 'vitest';
import { pumpSpeed } from '@/lib/plausibility/set/pump-speed';
import { set } from '../../matching/easy';
import { inSet, onDrive, row } from '../in-set';

const of = (load: object, coupling: object = { ratio: 5 }, supply: object = {}) =>
  inSet(pumpSpeed, { load: { atPumpRpm: null, ...load }, coupling: { type: 'gear', ...coupling }, supply });

// n / ratio: 1750 rpm / 5 = 350 rpm.
test.each([
  ['slower than it may', { maxPumpRpm: 420 }, null],
  ['as fast as it may', { maxPumpRpm: 350 }, null],
  ['a fiftieth faster', { maxPumpRpm: 343.2 }, null],
  ['faster', { maxPumpRpm: 340 }, 'coupling.ratio'],
  ['the load told above the limit', { atPumpRpm: 430, maxPumpRpm: 420 }, 'load.atPumpRpm'],
  ['the load told at the limit', { atPumpRpm: 420, maxPumpRpm: 420 }, null],
])('%s', (_, load, field) => {
  const doubt = of(load);
  expect(doubt?.field ?? null).toBe(field);
  expect(doubt?.grade ?? 'wrong').toBe('wrong');
});

test('the sum is shown, and the ratio it would take', () => {
  expect(of({ maxPumpRpm: 250 })).toMatchObject({
    expected: 7,
    says: '1750 rpm / 5 = 350 rpm at the pump, which may turn at 250 rpm at most.',
  });
});

test('shaft to shaft the ratio is 1', () => {
  expect(of({ maxPumpRpm: 1500 }, { type: 'coupling', ratio: null })?.grade).toBe('wrong');
});

test('on a drive its highest frequency counts, and can be lowered', () => {
  const fast = {
    ...onDrive({ maxHertz: 90 }),
    load: { atPumpRpm: null, maxPumpRpm: 420 },
    coupling: { type: 'gear', ratio: 5 },
  } as const;
  expect(inSet(pumpSpeed, fast)).toMatchObject({
    grade: 'doubtful',
    field: 'supply.drive.maxHertz',
    have: 90,
    expected: 72,
    unit: 'Hz',
    says: '1750 rpm × 90 Hz / 60 Hz / 5 = 525 rpm at the pump, which may turn at 420 rpm at most.',
  });
  expect(
    inSet(pumpSpeed, { ...fast, ...onDrive({ maxHertz: 60 }), load: { atPumpRpm: null, maxPumpRpm: 300 } }),
  ).toMatchObject({
    grade: 'doubtful',
    field: 'coupling.ratio',
    expected: 5.83,
  });
  const slow = { ...fast, ...onDrive({ maxHertz: 60 }) };
  expect(inSet(pumpSpeed, slow)).toBeNull();
});

test.each([
  ['no limit', of({ maxPumpRpm: null })],
  ['no ratio of a gear', of({ maxPumpRpm: 100 }, { ratio: null })],
  ['no row for the supply', of({ maxPumpRpm: 100 }, { ratio: 5 }, { volts: 230 })],
  ['no speed', inSet(pumpSpeed, { load: { atPumpRpm: null, maxPumpRpm: 100 } }, row({ rpm: null }))],
  ['no motor', pumpSpeed(set({ load: { atPumpRpm: null, maxPumpRpm: 100 } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
