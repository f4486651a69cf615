import { describe, expect, test } from 'vitest';
import { breakaway } from '@/lib/matching/criteria/load/breakaway';
import { motor, set } from '../easy';
import { asked } from './asked';

// T_fl = 20.346 N·m, load 16.916 N·m (see operating-point.test.ts). Design B, 5 hp, 4 poles: locked-rotor 185 %, pull-up
// 130 %, breakdown 225 % at least (NEMA MG 1-12.38, 12.40, 12.39, read in one text).
const drive = { outputVolts: 460, baseHertz: 60, ratedA: 14, overloadPct: 150 };
const onDrive = (differs: object = {}) => ({ start: 'drive' as const, volts: 460, drive: { ...drive, ...differs } });
const softly = (softStartLimitPct: number | null) => ({ start: 'soft' as const, softStartLimitPct });
const plate = (differs: object) => [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, ...differs }];
const starDelta = { winding: 'star-delta-6', leads: 6 } as const;
const load = (breakawayPct: number | null, more: object = {}) => ({ load: { breakawayPct, ...more } });

describe('started direct', () => {
  test.each([
    // 37.64 N·m: 1.2 times is kept up to 185.4 % of the load, the load itself up to 222.5 %.
    ['1.2 times and more', load(185), {}, 'ok'],
    ['under 1.2 times', load(186), {}, 'check'],
    ['still above', load(222), {}, 'check'],
    ['under the need', load(223), {}, 'block'],
    ['nothing asked at rest', load(0), {}, 'ok'],
    ['more as plated: 275 %', load(223), { lockedRotorPct: 275 }, 'ok'],
    ['less as plated: 120 %', load(150), { lockedRotorPct: 120 }, 'block'],
    ['design C: 255 % (from memory)', load(223), { design: 'C' }, 'ok'],
    ['no figure and no letter', load(110), { design: null }, 'check'],
    ['a letter without a table', load(110), { design: 'E' }, 'check'],
    ['a single-phase motor without a figure', load(110), { kind: 'single-phase', phases: 1 }, 'check'],
    ['at 414 V: 0.81 of it, 30.49 N·m', { ...load(185), supply: { measuredVolts: 414 } }, {}, 'block'],
    ['at 437 V: 0.9025 of it, 33.97 N·m', { ...load(185), supply: { measuredVolts: 437 } }, {}, 'check'],
    ['voltage unknown', { ...load(110), supply: { volts: null } }, {}, 'check'],
    ['rated torque unknown', load(110), { ratings: plate({ rpm: null }) }, 'check'],
    ['how it is started unknown', { ...load(110), supply: { start: null } }, {}, 'check'],
    ['too little even started direct', { ...load(223), supply: { start: null } }, {}, 'block'],
    [
      'a gear of 80 %: 21.15 N·m asked',
      { ...load(180), coupling: { type: 'gear', ratio: 1, efficiencyPct: 80 } },
      {},
      'block',
    ],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(breakaway, set(differs), motor(plated))?.grade).toBe(grade);
  });

  test('the two torques are told', () => {
    const found = asked(breakaway, set(load(110)), motor());
    expect(found?.have).toBeCloseTo(37.64, 2);
    expect(found?.need).toBeCloseTo(18.61, 2);
  });

  test('a standard’s least asks for the maker’s figure, a plated one for a person', () => {
    expect(asked(breakaway, set(load(200)), motor())).toMatchObject({ grade: 'check', by: 'reading' });
    expect(asked(breakaway, set(load(200)), motor({ lockedRotorPct: 185 }))).toMatchObject({ by: 'person' });
  });
});

describe('started in star', () => {
  const star = { start: 'star-delta' } as const;
  const delta = [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, connection: 'delta' as const }];
  test.each([
    // 37.64/3 = 12.55 N·m; pull-up 130 %/3 is 8.82 N·m.
    ['a constant torque of 16.9 N·m', load(50), 'block'],
    ['a constant torque above the pull-up', load(30), 'block'],
    ['a constant torque below the pull-up', load(100, { shaftKw: 1.5 }), 'ok'],
    ['a quadratic load is not asked of the pull-up', load(30, { kind: 'quadratic' }), 'ok'],
    ['a quadratic load stuck at rest', load(80, { kind: 'quadratic' }), 'block'],
  ] as const)('%s', (_, differs, grade) => {
    const candidate = motor({ ...starDelta, ratings: delta });
    expect(asked(breakaway, set({ ...differs, supply: star }), candidate)?.grade).toBe(grade);
  });

  test('pull-up unknown asks for the maker’s figure', () => {
    const candidate = motor({ ...starDelta, ratings: delta, design: null, lockedRotorPct: 300 });
    const found = asked(breakaway, set({ ...load(50, { shaftKw: 1.5 }), supply: star }), candidate);
    expect(found).toMatchObject({ grade: 'check', by: 'reading' });
    expect(found?.reading).toContain('Pull-up');
  });

  test('a winding without star-delta, where direct start is allowed, is judged as started direct', () => {
    const found = asked(breakaway, set({ ...load(110), supply: { ...star, directAllowed: true } }), motor());
    expect(found?.have).toBeCloseTo(37.64, 2);
  });
});

describe('on a soft starter', () => {
  test.each([
    // Code letter J, up to 7.99 kVA/hp: 50.1 A. At 300 % of 6.6 A: (19.8/50.1)² = 0.156, 5.87 N·m.
    ['enough', load(28), softly(300), {}, 'ok'],
    ['under 1.2 times', load(32), softly(300), {}, 'check'],
    ['under the need', load(36), softly(300), {}, 'block'],
    ['a limit above the inrush gives no more than direct', load(186), softly(1000), {}, 'check'],
    ['limit unknown', load(28), softly(null), {}, 'check'],
    ['limit unknown, too little even direct', load(223), softly(null), {}, 'block'],
    ['inrush unknown', load(28), softly(300), { codeLetter: null, design: null, lockedRotorPct: 185 }, 'check'],
  ] as const)('%s', (_, differs, supply, plated, grade) => {
    expect(asked(breakaway, set({ ...differs, supply }), motor(plated))?.grade).toBe(grade);
  });
});

describe('on a drive', () => {
  test.each([
    // 20.346·1.5·14/6.6 = 64.7 N·m; 0.8·225 % of T_fl = 36.62 N·m.
    ['the motor is the lesser', load(180), {}, {}, 'ok'],
    ['the motor, under 1.2 times', load(181), {}, {}, 'check'],
    ['the motor, under the need', load(217), {}, {}, 'block'],
    ['breakdown as plated: 300 %', load(217), {}, { breakdownPct: 300 }, 'ok'],
    // 20.346·1.5·7/6.6 = 32.37 N·m.
    ['the drive is the lesser', load(180), { ratedA: 7 }, {}, 'check'],
    ['the drive, under the need', load(192), { ratedA: 7 }, {}, 'block'],
    ['overload unstated', load(110), { overloadPct: null }, {}, 'check'],
    ['overload unstated, too little in the motor', load(217), { overloadPct: null }, {}, 'block'],
    ['drive amps unknown', load(110), { ratedA: null }, {}, 'check'],
    ['breakdown unknown', load(110), {}, { design: null }, 'check'],
    ['plate amps unknown', load(110), {}, { ratings: plate({}) }, 'check'],
  ] as const)('%s', (_, differs, limits, plated, grade) => {
    expect(asked(breakaway, set({ ...differs, supply: onDrive(limits) }), motor(plated))?.grade).toBe(grade);
  });
});

describe('load torque not known in full', () => {
  const gear = { coupling: { type: 'gear', ratio: 1 } as const };
  test.each([
    ['gear losses unknown, the same motor', { ...load(150), ...gear }, {}, 'ok'],
    ['gear losses unknown, a weaker start', { ...load(150), ...gear }, { lockedRotorPct: 160 }, 'check'],
    ['gear losses unknown, too little without any', { ...load(230), ...gear }, {}, 'block'],
    ['shaft power unknown, the same motor', load(150, { shaftKw: null }), {}, 'ok'],
    ['shaft power unknown, a weaker start', load(150, { shaftKw: null }), { lockedRotorPct: 160 }, 'check'],
    ['shaft power unknown, enough had the pump taken all', load(100, { shaftKw: null }), { lockedRotorPct: 160 }, 'ok'],
    ['shaft power and failed plate unknown', { ...load(150, { shaftKw: null }), failed: null }, {}, 'check'],
  ] as const)('%s', (_, differs, plated, grade) => {
    expect(asked(breakaway, set(differs), motor(plated))?.grade).toBe(grade);
  });
});

describe('breakaway unstated', () => {
  const highTorque = { failed: { id: 'M-0', design: 'C' as const } };
  test.each([
    ['a direct start is not asked', {}, {}, null],
    ['a drive is not asked', { supply: onDrive() }, {}, null],
    ['star-delta of a constant torque', { supply: { start: 'star-delta' } }, {}, 'check'],
    ['a soft start of a constant torque', { supply: softly(300) }, {}, 'check'],
    ['a soft start of a quadratic load is not asked', { supply: softly(300), load: { kind: 'quadratic' } }, {}, null],
    ['design B for the failed C', highTorque, {}, 'check'],
    ['design C for the failed C', highTorque, { design: 'C' }, null],
    ['design D for the failed C', highTorque, { design: 'D' }, null],
    ['no letter for the failed C', highTorque, { design: null }, 'check'],
  ] as const)('%s', (_, differs, plated, grade) => {
    const asks = set({ ...differs, load: { breakawayPct: null, ...('load' in differs ? differs.load : {}) } });
    expect(asked(breakaway, asks, motor(plated))?.grade ?? null).toBe(grade);
  });
});
