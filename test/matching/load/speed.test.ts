import { describe, expect, test } from 'vitest';
import { speed } from '@/lib/matching/criteria/load/speed';
import { motor, set } from '../easy';
import { asked } from './asked';

// The easy motor at the easy load runs 1758.4 rpm, 0.48 % over the 1750 asked: see operating-point.test.ts.
const plate = (rpm: number | null, more: object = {}) => [{ volts: 460, hertz: 60, hp: 5, rpm, amps: 6.6, ...more }];
const sixPole = { poles: 6, ratings: plate(1160) };
const twoPole = { poles: 2, ratings: [{ volts: 460, hertz: 60, hp: 10, rpm: 3500, amps: 12 }] };
const belt = { type: 'belt', ratio: 1 } as const;
const onDrive = (limits: object = {}) => ({
  start: 'drive' as const,
  volts: 460,
  drive: { outputVolts: 460, baseHertz: 60, ratedA: 14, ...limits },
});

describe('on the mains', () => {
  test.each([
    ['within tolerance', {}, {}, 'ok'],
    ['within a tolerance of 0.5 %', { load: { flowTolerancePct: 0.5 } }, {}, 'ok'],
    ['outside a tolerance of 0.4 %: to the letter', { load: { flowTolerancePct: 0.4 } }, {}, 'block'],
    ['no tolerance stated: 5 % is taken', { load: { flowTolerancePct: null, atPumpRpm: 1690 } }, {}, 'ok'],
    ['no tolerance stated, 5.6 % faster', { load: { flowTolerancePct: null, atPumpRpm: 1665 } }, {}, 'block'],
    ['another number of poles', {}, sixPole, 'block'],
    ['above the pump’s maximum', { load: { maxPumpRpm: 1755 } }, {}, 'block'],
    ['below the pump’s maximum', { load: { maxPumpRpm: 1760 } }, {}, 'ok'],
    ['asked more than the pump’s own maximum', { load: { maxPumpRpm: 1700 } }, {}, 'block'],
    ['above the motor’s own maximum', {}, { maxRpm: 1757 }, 'block'],
    ['a plate at synchronous speed: slip unknown', {}, { ratings: plate(1800) }, 'check'],
    ['a plate without a speed', {}, { ratings: plate(null) }, 'check'],
    ['poles and speed unknown', {}, { poles: null, ratings: plate(null) }, 'check'],
    ['nothing tells the speed asked', { failed: null, load: { atPumpRpm: null } }, {}, 'check'],
    ['beyond 1.25 of the torque', { load: { shaftKw: 4.7 } }, {}, 'check'],
    ['beyond 1.25 of the torque, two poles for four', {}, { poles: 2, ratings: plate(3500) }, 'block'],
    ['load unknown, plates alike', { load: { shaftKw: null } }, {}, 'ok'],
    ['load unknown, other poles', { load: { shaftKw: null } }, sixPole, 'block'],
    ['slip unknown, other poles', {}, { poles: 6, ratings: plate(1200) }, 'block'],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(speed, set(differs), motor(plated))?.grade).toBe(grade);
  });

  test('the 5 % taken where no tolerance is stated is named, and as common practice', () => {
    const says = asked(speed, set({ load: { flowTolerancePct: null } }), motor())?.says;
    expect(says).toMatch(/no tolerance stated.*5 %.*common practice/);
    expect(asked(speed, set(), motor())?.says).not.toContain('tolerance');
  });

  test('pump rpm is compared, behind the ratio', () => {
    const found = asked(
      speed,
      set({ coupling: { type: 'gear', ratio: 5, efficiencyPct: 100 }, load: { atPumpRpm: 350 } }),
      motor(),
    );
    expect(found).toMatchObject({ grade: 'ok', need: 350, unit: 'rpm' });
    expect(found?.have).toBeCloseTo(351.69, 2);
  });

  test('a failed plate at synchronous speed tells at least the poles', () => {
    const differs = { failed: { id: 'M-0', poles: 4, ratings: plate(1800) }, load: { atPumpRpm: null } };
    expect(asked(speed, set(differs), motor())?.grade).toBe('check');
    expect(asked(speed, set(differs), motor(sixPole))?.grade).toBe('block');
  });
});

describe('behind a belt', () => {
  test.each([
    // Two poles of the same power have half the torque: beyond 1.25 of it with the old sheave, well within with half of it.
    ['two poles for four', {}, { poles: 2, ratings: plate(3500) }, 'work'],
    ['beyond 1.25 of the torque, whatever the sheave', { load: { shaftKw: 5 } }, {}, 'check'],
    ['another speed', {}, sixPole, 'work'],
    ['above the pump’s maximum', { load: { maxPumpRpm: 1755 } }, {}, 'work'],
    ['a sheave that cannot be changed', { coupling: { ...belt, sheave: { changeable: false } } }, sixPole, 'block'],
    ['load unknown', { load: { shaftKw: null } }, sixPole, 'work'],
    ['a motor whose own maximum is too low', {}, { ...sixPole, maxRpm: 1100 }, 'block'],
  ] as const)('%s', (_, differs, plated, grade) => {
    const found = asked(speed, set({ coupling: belt, ...differs }), motor(plated));
    expect(found?.grade).toBe(grade);
    if (grade === 'work') expect(found?.work?.id).toBe('sheave');
  });

  test('the new sheave’s diameter is told: 150 mm·1750/1165.15 = 225.3 mm', () => {
    const coupling = { ...belt, sheave: { pitchDiameterMm: 150, changeable: true } };
    expect(asked(speed, set({ coupling }), motor(sixPole))?.work?.what).toContain('225.3 mm');
  });
});

describe('on a drive', () => {
  test.each([
    ['the same motor', {}, {}, {}, 'ok'],
    ['two poles for four: another frequency', {}, {}, twoPole, 'work'],
    ['six poles for four: above base', {}, {}, sixPole, 'check'],
    ['six poles for four: above the drive’s limit', { maxHertz: 60 }, {}, sixPole, 'check'],
    ['two poles for four: below the drive’s limit', { minHertz: 40 }, {}, twoPole, 'check'],
    ['at its maximum frequency above the pump’s maximum', { maxHertz: 70 }, { maxPumpRpm: 1800 }, {}, 'work'],
    ['at its maximum frequency below the pump’s maximum', { maxHertz: 60 }, { maxPumpRpm: 1800 }, {}, 'ok'],
    ['at its maximum frequency above the motor’s', { maxHertz: 70 }, {}, { maxRpm: 1900 }, 'work'],
    ['load unknown, two poles for four', {}, { shaftKw: null }, twoPole, 'work'],
    ['load unknown, maximum frequency too high', { maxHertz: 70 }, { maxPumpRpm: 1800, shaftKw: null }, {}, 'work'],
    [
      'slip unknown, maximum frequency too high',
      { maxHertz: 70 },
      { maxPumpRpm: 1800 },
      { ratings: plate(1800) },
      'check',
    ],
  ] as const)('%s', (_, limits, load, plated, grade) => {
    const found = asked(speed, set({ supply: onDrive(limits), load }), motor(plated));
    expect(found?.grade).toBe(grade);
    if (grade === 'work') expect(found?.work?.id).toBe('drive-settings');
  });

  test('lowers the limit to the frequency of the pump’s maximum', () => {
    const found = asked(speed, set({ supply: onDrive({ maxHertz: 70 }), load: { maxPumpRpm: 1800 } }), motor());
    // 1800 rpm under 16.916 N·m, above base: 1800·x = 1800 + 41.57·x² at x = 1.0242, 61.5 Hz.
    expect(found?.work?.what).toMatch(/61\.5 Hz/);
  });

  test('two poles for four lower the limit as well', () => {
    const found = asked(speed, set({ supply: onDrive({ maxHertz: 60 }), load: { maxPumpRpm: 1800 } }), motor(twoPole));
    expect(found?.work?.what).toMatch(/30\.6 Hz for the duty, and lower its maximum frequency to 31\.4 Hz/);
  });

  test('without a speed asked tells by how much to change the settings', () => {
    const found = asked(speed, set({ supply: onDrive(), load: { atPumpRpm: null } }), motor(twoPole));
    expect(found).toMatchObject({ grade: 'check', by: 'person', work: { id: 'drive-settings' } });
    expect(found?.work?.what).toContain('0.5 times'); // 1750/3500
  });
});

describe('a centrifugal pump that runs slower', () => {
  // Asked 1800 rpm of 3.37 kW: 17.88 N·m, slip 43.9 falling with the square: 1758.1 rpm, 2.3 % slower.
  const at = (staticHeadPct: number | null, atPumpRpm = 1800) =>
    set({ load: { kind: 'quadratic', shaftKw: 3.37, atPumpRpm, staticHeadPct } });
  test.each([
    ['static head unstated', at(null), 'check', 'reading'],
    ['static head unstated, slower by under 2 %', at(null, 1785), 'ok', null],
    ['no static head: flow follows speed', at(0), 'ok', null],
    // q² = (1.2·0.9767² − 0.9)/(1.2 − 0.9) = 0.8158, q = 0.903.
    ['static head of 90 %: flow falls by about 10 %', at(90), 'check', 'person'],
  ] as const)('%s', (_, asks, grade, by) => {
    expect(asked(speed, asks, motor())).toMatchObject({ grade, by });
  });

  test('is told how far the flow may fall', () => {
    expect(asked(speed, at(90), motor())?.says).toContain('10 %');
  });

  test('is not asked of a positive-displacement pump', () => {
    expect(asked(speed, set({ load: { atPumpRpm: 1800, shaftKw: 3.37 } }), motor())?.grade).toBe('ok');
  });
});
