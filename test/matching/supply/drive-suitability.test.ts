import { expect, test } from 'vitest';
import { driveSuitability } from '@/lib/matching/criteria/supply/drive-suitability';
import type { PumpSetInput } from '@/lib/plant/set';
import { motor, set } from '../easy';
import { asked } from './asked';

type Drive = NonNullable<NonNullable<PumpSetInput['supply']>['drive']>;

/** A 460 V drive for a quadratic load, so that only the winding is judged; no plate of the failed motor. */
const onDrive = (drive: Partial<Drive> = {}, load: 'quadratic' | 'constant-torque' = 'quadratic') =>
  set({
    failed: null,
    load: { kind: load },
    supply: {
      volts: 480,
      start: 'drive',
      drive: { outputVolts: 460, baseHertz: 60, minHertz: 60, maxHertz: 60, ...drive },
    },
  });
const low = { outputVolts: 230 };
const declared = motor({ driveDuty: 'inverter', constantTorqueRange: 10 });
const plain = motor({ driveDuty: 'none' });

// MG 1 Part 30: 1000 V peak; 460 V drives reach 1200 to 1600 V, 575 V about 2100 V; cable caution 100 ft (one text each).
test.each([
  ['inverter duty', {}, 'inverter', 'work'],
  ['general, short cable', { cableM: 20 }, 'general', 'work'],
  ['general, long cable', { cableM: 60 }, 'general', 'check'],
  ['general, long cable and filter', { cableM: 60, filter: true }, 'general', 'work'],
  ['general at 575 V', { outputVolts: 575 }, 'general', 'check'],
  ['none', {}, 'none', 'check'],
  ['none, short cable', { cableM: 5 }, 'none', 'check'],
  ['none, filter', { filter: true }, 'none', 'work'],
  ['none, up to 250 V', low, 'none', 'work'],
  ['unknown', {}, null, 'check'],
  ['unknown, up to 250 V', low, null, 'work'],
  ['none, output unknown', { outputVolts: null }, 'none', 'check'],
] as const)('drive duty: %s', (_, drive, driveDuty, grade) => {
  const candidate = motor({ driveDuty });
  expect(asked(driveSuitability, onDrive(drive), candidate)).toMatchObject({ grade, work: { id: 'drive-settings' } });
});

test('the check names the peak voltage: 2√2 × 460 V = 1301 V', () => {
  const found = asked(driveSuitability, onDrive(), plain);
  expect(found?.says).toContain('1301 V');
  expect(found?.by).toBe('person');
});

test('what the failed motor was declared for is asked of the candidate, at any voltage', () => {
  const evident = (driveDuty: 'inverter' | 'none') => {
    const was = onDrive(low);
    return { ...was, failed: motor({ driveDuty }) };
  };
  expect(asked(driveSuitability, evident('inverter'), plain)?.grade).toBe('check');
  expect(
    asked(
      driveSuitability,
      evident('none'),
      motor({ ratings: [{ volts: 230, hertz: 60, hp: 5, rpm: 1745, amps: 13 }] }),
    )?.grade,
  ).toBe('work');
});

// Constant-torque range as declared; conventions from memory.
test.each([
  ['inside', { minHertz: 6 }, 10, 'work'],
  ['at its end', { minHertz: 15 }, 4, 'work'],
  ['beyond', { minHertz: 5 }, 10, 'check'],
  ['unknown', { minHertz: 30 }, null, 'check'],
  ['not below base', { minHertz: 60 }, null, 'work'],
  ['lowest frequency not stated', { minHertz: null }, 10, 'work'],
])('constant torque, range %s', (_, drive, constantTorqueRange, grade) => {
  const candidate = motor({ driveDuty: 'inverter', constantTorqueRange });
  expect(asked(driveSuitability, onDrive(drive, 'constant-torque'), candidate)?.grade).toBe(grade);
});

test('a quadratic load asks no constant-torque range', () => {
  const candidate = motor({ driveDuty: 'inverter', constantTorqueRange: null });
  expect(asked(driveSuitability, onDrive({ minHertz: 6 }), candidate)?.grade).toBe('work');
});

// 1800 rpm at 60 Hz is 2250 rpm at 75 Hz: arithmetic.
test.each([
  ['within its highest speed', 2700, 'work'],
  ['above its highest speed', 2200, 'block'],
  ['highest speed unknown', null, 'check'],
])('above base frequency: %s', (_, maxRpm, grade) => {
  const candidate = motor({ driveDuty: 'inverter', maxRpm });
  expect(asked(driveSuitability, onDrive({ maxHertz: 75 }), candidate)?.grade).toBe(grade);
});

test('the plate is entered in the drive whatever it shows, the failed motor’s own too', () => {
  const was = { ...onDrive(), failed: declared };
  expect(asked(driveSuitability, was, declared)).toMatchObject({ grade: 'work', work: { id: 'drive-settings' } });
  const other = motor({ driveDuty: 'inverter', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1755, amps: 6.4 }] });
  expect(asked(driveSuitability, was, other)).toMatchObject({ grade: 'work', work: { id: 'drive-settings' } });
});

test('an undeclared motor stays a check though the failed one was undeclared too, and asks whether its winding broke', () => {
  const was = { ...onDrive(), failed: plain };
  const found = asked(driveSuitability, was, plain);
  expect(found).toMatchObject({ grade: 'check', by: 'person', work: { id: 'drive-settings' } });
  expect(found?.says).toContain('whether its winding broke');
});

test('a range the failed motor lacked as well is still a check', () => {
  const narrow = motor({ driveDuty: 'inverter', constantTorqueRange: 4 });
  const was = { ...onDrive({ minHertz: 10 }, 'constant-torque'), failed: narrow };
  expect(asked(driveSuitability, was, narrow)).toMatchObject({ grade: 'check', have: 4, need: 6, unit: ':1' });
});

test('is not asked on the mains', () => {
  expect(asked(driveSuitability, set(), declared)).toBeNull();
});
