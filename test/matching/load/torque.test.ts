import { describe, expect, test } from 'vitest';
import { torque } from '@/lib/matching/criteria/load/torque';
import { motor, set } from '../easy';
import { asked } from './asked';

// T_fl = 20.346 N·m, load 16.916 N·m, 83 % of it (see operating-point.test.ts).
const drive = (limits: object = {}) => ({
  start: 'drive' as const,
  volts: 460,
  drive: { outputVolts: 460, baseHertz: 60, ratedA: 14, ...limits },
});
const load = (shaftKw: number | null, atPumpRpm = 1750) => ({ load: { shaftKw, atPumpRpm } });
const plate = (hp: number, rpm = 1750) => [{ volts: 460, hertz: 60, hp, rpm, amps: 6.6 }];

describe('rated torque against the load', () => {
  test.each([
    ['enough', {}, {}, 'ok'],
    ['1 % too little', load(3.766), {}, 'check'],
    ['inside the service factor', load(4), {}, 'check'],
    ['the same with none printed', load(4), { serviceFactor: null }, 'block'],
    ['the same at altitude', { ...load(3.9), surroundings: { altitudeM: 1500 } }, {}, 'block'],
    ['too little by heat: 0.82', { surroundings: { ambientC: 60 } }, { serviceFactor: null }, 'check'],
    ['at low voltage it slips more', { supply: { measuredVolts: 418 } }, {}, 'note'],
    ['rated torque unknown', {}, { ratings: plate(5).map((row) => ({ ...row, rpm: null })) }, 'check'],
    ['kind of load unknown: not asked', { load: { kind: null } }, {}, null],
    ['shaft power unknown: not asked', load(null), {}, null],
    ['a quadratic load on the mains: power says it', { load: { kind: 'quadratic' } }, {}, null],
    ['gear losses unknown, no weaker', { coupling: { type: 'gear', ratio: 1 } }, {}, 'ok'],
    ['gear losses unknown, weaker', { coupling: { type: 'gear', ratio: 1 } }, { ratings: plate(4.5) }, 'check'],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(torque, set(differs), motor(plated))?.grade ?? null).toBe(grade);
  });

  test('N·m at the motor', () => {
    const found = asked(torque, set(), motor());
    expect(found?.have).toBeCloseTo(20.345, 2);
    expect(found?.need).toBeCloseTo(16.916, 2);
  });
});

describe('at every speed asked of a drive', () => {
  test.each([
    ['at base', {}, {}, {}, 'ok'],
    // Fan-cooled: 0.85 at half speed, 0.72 at a third (guidance curve, from memory): 17.29 and 14.65 N·m.
    ['down to half speed', {}, { minHertz: 30 }, {}, 'ok'],
    ['down to a third', {}, { minHertz: 20 }, {}, 'check'],
    ['down to a third, declared 10:1', {}, { minHertz: 20 }, { constantTorqueRange: 10 }, 'ok'],
    ['down to a third, declared 2:1', {}, { minHertz: 20 }, { constantTorqueRange: 2 }, 'check'],
    ['down to a third, its own blower', {}, { minHertz: 20 }, { enclosure: 'TEBC' }, 'ok'],
    ['down to a twentieth', {}, { minHertz: 3 }, {}, 'check'],
    ['set at a third, no lower limit told', load(1.033, 583), {}, {}, 'check'],
    // Above base as base over frequency: 20.346·60/70 = 17.44; at 75 Hz 16.28 N·m.
    ['up to 70 Hz', {}, { maxHertz: 70 }, {}, 'ok'],
    ['up to 75 Hz', {}, { maxHertz: 75 }, {}, 'check'],
    ['set at 80 Hz: 0.75 of it', load(4.05, 2300), {}, {}, 'block'],
    ['no service factor on a drive', load(3.95), {}, {}, 'block'],
  ] as const)('%s', (_, differs, limits, plated, grade) => {
    expect(asked(torque, set({ ...differs, supply: drive(limits) }), motor(plated))?.grade ?? null).toBe(grade);
  });

  test('a quadratic load is judged at its set speed: two poles of the same power have half the torque', () => {
    const two = motor({ poles: 2, ratings: plate(5, 3500) });
    expect(asked(torque, set({ supply: drive(), load: { kind: 'quadratic' } }), two)?.grade).toBe('block');
    expect(asked(torque, set({ supply: drive({ minHertz: 3 }), load: { kind: 'quadratic' } }), motor())?.grade).toBe(
      'ok',
    );
  });
});

describe('what coupling and gear can carry', () => {
  test.each([
    ['stated and above the rated torque', { coupling: { maxTorqueNm: 21 } }, {}, 'ok'],
    ['stated and below it', { coupling: { maxTorqueNm: 20 } }, {}, 'check'],
    ['stated below it, the load unknown', { coupling: { maxTorqueNm: 20 }, ...load(null) }, {}, 'check'],
    ['unstated, 1.5 times the failed power', {}, { ratings: plate(7.5) }, 'ok'],
    ['unstated, twice the failed power', {}, { ratings: plate(10) }, 'check'],
    ['stated, twice the failed power', { coupling: { maxTorqueNm: 45 } }, { ratings: plate(10) }, 'ok'],
    ['unstated, no failed plate', { failed: null }, { ratings: plate(10) }, 'ok'],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(torque, set(differs), motor(plated))?.grade ?? null).toBe(grade);
  });
});
