import { describe, expect, test } from 'vitest';
import { iec, isWellFormed, judged, near, nema } from './whole-case';

type Part = { [key: string]: string | number | boolean | null };

// T_fl = 9549.30 × 3.7285/1750 = 20.345 N·m; load torque 9549.30 × 3/1750 = 16.370. Design B, 5 hp, 4 poles: locked rotor
// 185 % (MG 1 12.38), breakdown 225 % (12.39). Under 1.2 × need check, under need block.
const breakaway = (breakawayPct: number | null, motor: Part = {}, supply: object = {}, load: Part = {}) =>
  judged(nema, {
    motor,
    set: {
      supply: { overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null, ...supply },
      load: { breakawayPct, ...load },
    },
  });

describe('direct, by the design letter: 1.85 × 20.345 = 37.639 N·m', () => {
  test.each([
    [150, 24.555, 'ok'],
    [191, 31.267, 'ok'], // 1.2038
    [192, 31.431, 'check'], // 1.1975
    [229, 37.488, 'check'],
    [230, 37.6515, 'block'],
  ])('%i %% of 16.370', (pct, need, grade) => {
    const found = breakaway(pct);
    expect(found.of('breakaway')).toMatchObject({
      grade,
      have: near(37.639),
      need: near(need),
      unit: 'N·m',
      difference: near(37.639 - need, 2),
    });
    // A table's least may be bettered: the maker's sheet tells.
    if (grade === 'check') expect(found.of('breakaway')?.by).toBe('reading');
    expect(found.verdict).toBe(grade === 'ok' ? 'straight-swap' : grade === 'check' ? 'check-first' : 'unsuitable');
    isWellFormed(found);
  });
});

test('as plated wins over the letter: 200 % is 40.691 N·m', () => {
  const plated = { lockedRotorPct: 200 };
  expect(breakaway(207, plated).of('breakaway')).toMatchObject({ grade: 'ok', have: near(40.691), need: near(33.886) });
  expect(breakaway(208, plated).of('breakaway')).toMatchObject({ grade: 'check', have: near(40.691), by: 'person' });
  expect(breakaway(249, plated).of('breakaway')).toMatchObject({ grade: 'block', have: near(40.691) });
  // 120 %: 24.414 against 150 % = 24.555
  expect(breakaway(150, { lockedRotorPct: 120 }).of('breakaway')).toMatchObject({ grade: 'block', have: near(24.414) });
});

test('× φ²: on 440 V (440/460)² × 37.639 = 34.437', () => {
  expect(breakaway(150, {}, { volts: 440 }).of('breakaway')).toMatchObject({ grade: 'ok', have: near(34.437) });
  // 230 N·m per cent of need 34.377: passes need by a hair
  expect(breakaway(210, {}, { volts: 440 }).of('breakaway')).toMatchObject({ grade: 'check', need: near(34.377) });
  expect(breakaway(211, {}, { volts: 440 }).of('breakaway')?.grade).toBe('block');
});

test('neither plated nor a letter: a check with a reading', () => {
  const found = breakaway(150, { design: null });
  expect(found.of('breakaway')).toMatchObject({ grade: 'check', have: null, need: near(24.555), by: 'reading' });
  isWellFormed(found);
});

describe('the letter by power and poles', () => {
  test.each([
    // hp, poles, rpm, T_fl = 7120.9 × hp/rpm, per cent (MG 1 12.38)
    [5, 2, 3500, 10.173, 150],
    [5, 6, 1160, 30.694, 150],
    [5, 8, 875, 40.691, 130],
    [7.5, 4, 1760, 30.345, 175],
    [10, 4, 1760, 40.46, 165],
    [3, 4, 1740, 12.277, 215],
  ])('%d hp, %i poles', (hp, poles, rpm, ratedNm, pct) => {
    const motor = { poles, ratings: [{ volts: 460, hertz: 60, hp, rpm, amps: 6.6 }] };
    const found = judged(nema, { motor, set: { load: { breakawayPct: 100, shaftKw: 1 } } });
    expect(found.of('breakaway')?.have).toBeCloseTo((ratedNm * pct) / 100, 1);
  });
});

describe('star: a third, and the pull-up torque carries the load', () => {
  // IEC 4 kW 1445 rpm: T_fl 26.434; design N, 2.5 to 4 kW, 4 poles: locked rotor 1.7, pull-up 1.2. In star 14.979 and 10.574.
  const star = (shaftKw: number, breakawayPct: number, motor: Part = {}, load: Part = {}) =>
    judged(iec, {
      both: { winding: 'star-delta-6', ...motor },
      set: { supply: { start: 'star-delta' }, load: { shaftKw, breakawayPct, ...load } },
    }).of('breakaway');

  test('1.5 kW: load 9.913, breakaway 110 % = 10.904', () => {
    expect(star(1.5, 110)).toMatchObject({ grade: 'ok', have: near(14.979), need: near(10.904) });
  });
  test('130 %: 12.887 is within 1.2', () => {
    expect(star(1.5, 130)).toMatchObject({ grade: 'check', have: near(14.979), need: near(12.887), by: 'reading' });
  });
  test('160 %: 15.861 is more than it has', () => {
    expect(star(1.5, 160)).toMatchObject({ grade: 'block', have: near(14.979), need: near(15.8604) });
  });
  test('1.7 kW at 100 %: breaks away, but 10.574 does not pull up a load of 11.235', () => {
    expect(star(1.7, 100)).toMatchObject({ grade: 'block', have: near(10.574), need: near(11.2345) });
  });
  test('plated 250 % without a letter: the pull-up is not known', () => {
    expect(star(1.5, 110, { lockedRotorPct: 250, design: null })).toMatchObject({ grade: 'check', by: 'reading' });
  });
  test('a quadratic load asks little before changeover', () => {
    expect(star(3.2, 30, {}, { kind: 'quadratic', staticHeadPct: 0 })).toMatchObject({
      grade: 'ok',
      have: near(14.979),
    });
  });
  test('a 230/400 motor that may start direct has all of its torque: 44.938', () => {
    const ratings = [
      { volts: 230, hertz: 50, kw: 4, rpm: 1445, amps: 14, connection: 'delta' },
      { volts: 400, hertz: 50, kw: 4, rpm: 1445, amps: 8.1, connection: 'star' },
    ];
    const found = judged(iec, {
      motor: { ratings },
      set: { supply: { start: 'star-delta', directAllowed: true, overloadIn: 'phase' } },
    });
    expect(found.of('breakaway')).toMatchObject({ grade: 'ok', have: near(44.938) });
    // And its overload then stands in the line.
    expect(found.of('full-load-current')).toMatchObject({ grade: 'ok', have: 8.1, need: 10 });
    expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 4 });
  });
});

describe('soft: × (limit / locked-rotor current)²', () => {
  // Code J: 7.99 × 5000/(√3 × 460) = 50.142 A. 600 % of 6.6 is 39.6: 0.62371 × 37.639 = 23.476; 400 %: 26.4: 10.434.
  test.each([
    [600, 110, 23.476, 18.007, 'ok'], // 1.304
    [600, 120, 23.476, 19.644, 'check'], // 1.195
    [600, 144, 23.476, 23.573, 'block'],
    [400, 110, 10.434, 18.007, 'block'],
  ])('limit %i %%, breakaway %i %%', (softStartLimitPct, pct, have, need, grade) => {
    const found = breakaway(pct, {}, { start: 'soft', softStartLimitPct });
    expect(found.of('breakaway')).toMatchObject({ grade, have: near(have, 2), need: near(need), unit: 'N·m' });
    isWellFormed(found);
  });
  test('a limit above the locked-rotor current gives no more than direct', () => {
    expect(breakaway(110, {}, { start: 'soft', softStartLimitPct: 900 }).of('breakaway')).toMatchObject({
      have: near(37.639),
    });
  });
  test('limit not told: a reading', () => {
    const found = breakaway(110, {}, { start: 'soft' });
    expect(found.of('breakaway')).toMatchObject({ grade: 'check', by: 'reading', need: near(18.007) });
  });
});

describe('drive: the lesser of its current and 0.8 of breakdown', () => {
  const drive = (ratedA: number, overloadPct: number | null) => ({
    start: 'drive',
    drive: { ratedA, overloadPct, outputVolts: 460, baseHertz: 60, minHertz: 20, maxHertz: 60 },
  });
  // 0.8 × 2.25 × 20.345 = 36.622; 10 A of 6.6 at 150 %: 46.239; 6.6 A at 110 %: 22.380
  test.each([
    [10, 150, 186, 36.622, 30.449, 'ok', null], // 1.2027
    [10, 150, 187, 36.622, 30.612, 'check', 'reading'], // 1.1963
    [10, 150, 224, 36.622, 36.669, 'block', null],
    [6.6, 110, 113, 22.38, 18.498, 'ok', null], // 1.2098
    [6.6, 110, 115, 22.38, 18.826, 'check', 'person'], // 1.1888
    [6.6, 110, 137, 22.38, 22.427, 'block', null],
  ])('%d A at %i %%, breakaway %i %%', (ratedA, overloadPct, pct, have, need, grade, by) => {
    expect(breakaway(pct, {}, drive(ratedA, overloadPct)).of('breakaway')).toMatchObject({
      grade,
      have: near(have),
      need: near(need),
      by,
    });
  });
  test('overload not told: check', () => {
    expect(breakaway(110, {}, drive(10, null)).of('breakaway')).toMatchObject({ grade: 'check', by: 'reading' });
  });
  test('plated breakdown 300 %: the drive is the lesser', () => {
    expect(breakaway(110, { breakdownPct: 300 }, drive(10, 150)).of('breakaway')).toMatchObject({
      have: near(46.2395),
    });
  });
  test('no letter and no breakdown: check', () => {
    expect(breakaway(110, { design: null }, drive(10, 150)).of('breakaway')).toMatchObject({
      grade: 'check',
      by: 'reading',
    });
  });
});

describe('breakaway not stated', () => {
  test.each([
    ['direct', 'constant-torque', null],
    ['star-delta', 'constant-torque', 'check'],
    ['part-winding', 'constant-torque', 'check'],
    ['soft', 'constant-torque', 'check'],
    ['star-delta', 'quadratic', null],
    ['soft', 'quadratic', null],
  ])('%s, %s: %s', (start, kind, grade) => {
    const found = breakaway(null, {}, { start, softStartLimitPct: 400 }, { kind });
    expect(found.of('breakaway')?.grade ?? null).toBe(grade);
  });

  test.each([
    ['C', 'B', 'check'],
    ['D', 'C', 'check'],
    ['C', null, 'check'],
    ['C', 'C', null],
    ['C', 'D', null],
    ['B', 'A', null],
  ])('the failed motor was design %s, this one %s: %s', (had, design, grade) => {
    const found = judged(nema, { failed: { design: had }, motor: { design }, set: { load: { breakawayPct: null } } });
    expect(found.of('breakaway')?.grade ?? null).toBe(grade);
    isWellFormed(found);
  });
});

test('through a belt the load torque is over 0.95', () => {
  // 16.370/0.95 = 17.232; × 1.5 = 25.848
  const found = judged(nema, {
    set: {
      coupling: { type: 'belt', sheave: { pitchDiameterMm: 150, changeable: true } },
      load: { breakawayPct: 150 },
    },
  });
  expect(found.of('breakaway')).toMatchObject({ grade: 'ok', have: near(37.639), need: near(25.848) });
});

test('re-rated: 400/50 on 440 V 60 Hz has φ² = 0.8403 of 1.7 × 26.434 = 37.76', () => {
  const found = judged(iec, { set: { supply: { volts: 440, hertz: 60 }, load: { breakawayPct: 100 } } });
  expect(found.of('breakaway')).toMatchObject({ grade: 'ok', have: near(37.76, 2), need: near(21.147) });
});

test('through a gear of unknown losses an equal motor starts like for like', () => {
  // 5 hp at 1765 rpm has 0.9915 of the torque at 1750 rpm: equal powers, the same motor to the trade
  const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1765, amps: 6.4 }];
  const coupling = { type: 'gear', input: 'hub', ratio: 5 };
  const found = judged(nema, { motor: { ratings }, set: { coupling, load: { atPumpRpm: 350, breakawayPct: 150 } } });
  expect(found.of('breakaway')).toMatchObject({ grade: 'ok', have: near(37.319, 2) });
  expect(found.verdict).toBe('straight-swap');
});
