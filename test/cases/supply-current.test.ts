import { describe, expect, test } from 'vitest';
import { iec, isWellFormed, judged, near, nema } from './whole-case';

const EASY = { kind: 'quadratic', breakawayPct: 20, staticHeadPct: 0 };

describe('the overload dial against the plate amps of 8.1 A', () => {
  test.each([
    [6, 10, 'ok', 10],
    [8.1, 8.1, 'ok', 8.1],
    [9, 12, 'work', 9], // too high: 0.9 A short of its low end
    [5, 8, 'work', 8], // too low: 0.1 A over its high end
  ])('%d to %d A: %s', (overloadMinA, overloadMaxA, grade, need) => {
    const found = judged(iec, { set: { supply: { overloadMinA, overloadMaxA } } });
    const current = found.of('full-load-current');
    expect(current).toMatchObject({ grade, have: 8.1, need, unit: 'A', difference: near(8.1 - need, 6) });
    if (grade === 'work') {
      expect(current?.work).toMatchObject({ id: 'overload', hours: 0.25 });
      expect(current?.work?.what).toContain('8.1');
      expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 2.25 });
    } else expect(found.verdict).toBe('straight-swap');
    isWellFormed(found);
  });
});

describe('star-delta with the overload in the delta: 0.58 × 15 A = 8.7 A', () => {
  const ratings = [{ volts: 400, hertz: 50, kw: 7.5, rpm: 1450, amps: 15, connection: 'delta' }];
  const at = (overloadIn: string | null, overloadMinA: number, overloadMaxA: number) =>
    judged(iec, {
      both: { ratings, winding: 'star-delta-6' },
      set: { supply: { start: 'star-delta', overloadIn, overloadMinA, overloadMaxA, cableA: 25 }, load: EASY },
    });

  test('inside', () => {
    const found = at('phase', 8, 11);
    expect(found.of('full-load-current')).toMatchObject({ grade: 'ok', have: near(8.7, 6), need: 11 });
    expect(found.verdict).toBe('straight-swap');
  });

  test('below its low end: work with the new setting', () => {
    const current = at('phase', 9, 13).of('full-load-current');
    expect(current).toMatchObject({ grade: 'work', have: near(8.7, 6), need: 9, difference: near(-0.3, 6) });
    expect(current?.work).toMatchObject({ id: 'overload' });
    expect(current?.work?.what).toContain('8.7');
  });

  test('the same dial in the line is short of 15 A', () => {
    const current = at('line', 8, 11).of('full-load-current');
    expect(current).toMatchObject({ grade: 'work', have: 15, need: 11, difference: 4 });
    expect(current?.work?.what).toContain('15');
  });

  test('where it stands is not told: a reading', () => {
    const found = at(null, 8, 11);
    expect(found.of('full-load-current')).toMatchObject({ grade: 'check', by: 'reading' });
    isWellFormed(found);
  });
});

describe('above the contactor', () => {
  test.each([
    [8, 'block', 'unsuitable'],
    [8.1, 'ok', 'straight-swap'],
  ])('%d A: %s', (contactorA, grade, verdict) => {
    const found = judged(iec, { set: { supply: { contactorA } } });
    expect(found.of('full-load-current')).toMatchObject({ grade, have: 8.1 });
    if (grade === 'block')
      expect(found.of('full-load-current')).toMatchObject({ need: 8, unit: 'A', difference: near(0.1, 6) });
    expect(found.verdict).toBe(verdict);
  });
});

describe('1.25 × 8.1 = 10.125 A above the cable', () => {
  test.each([
    [10.125, 'ok'],
    [10, 'check'],
  ])('%d A: %s', (cableA, grade) => {
    const found = judged(iec, { set: { supply: { cableA } } });
    expect(found.of('full-load-current')?.grade).toBe(grade);
    if (grade === 'check')
      expect(found.of('full-load-current')).toMatchObject({
        have: near(10.125, 4),
        need: 10,
        unit: 'A',
        difference: near(0.125, 4),
        by: 'person',
      });
    isWellFormed(found);
  });
});

test('plate amps not told: a reading', () => {
  const ratings = [{ volts: 400, hertz: 50, kw: 4, rpm: 1445, connection: 'delta' }];
  const found = judged(iec, { motor: { ratings } });
  expect(found.of('full-load-current')).toMatchObject({ grade: 'check', have: null, need: 10, by: 'reading' });
  expect(found.verdict).toBe('check-first');
});

test('a set that states no overload, contactor, cable or drive asks nothing', () => {
  const none = { overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null };
  expect(judged(iec, { set: { supply: none } }).of('full-load-current')).toBeNull();
});

describe('the rating of a drive', () => {
  // 60 Hz holds 3 kW at 1750 rpm; on the drive φ is 1: T_fl 20.345, load 16.370 = 80.5 %. Set as the failed twin ran, the
  // motor makes 1750 rpm with 3 kW: 3 / 3.7285 = 0.8046 of its load. Line amps follow the load, and at reduced frequency the
  // volts fall with the speed: 6.6 × 16.370/20.345 = 5.3 A, give or take a few per cent.
  const on = (ratedA: number) =>
    judged(nema, {
      both: { driveDuty: 'inverter', constantTorqueRange: 10 },
      set: {
        supply: {
          start: 'drive',
          overloadMinA: null,
          overloadMaxA: null,
          contactorA: null,
          cableA: null,
          drive: {
            ratedA,
            overloadPct: 150,
            outputVolts: 460,
            baseHertz: 60,
            minHertz: 20,
            maxHertz: 60,
            filter: false,
          },
        },
        load: { breakawayPct: 0 },
      },
    });

  test.each([
    [6.6, 'ok'], // the plate is within it
    [6.5, 'check'], // the plate is above; 5.3 ≤ 0.9 × 6.5 = 5.85
    [6, 'check'], // 5.3 ≤ 5.4
    [5.5, 'block'], // 5.3 > 4.95: less than a tenth to spare
    [5, 'block'], // it runs above it
  ])('%d A: %s', (ratedA, grade) => {
    const found = on(ratedA);
    expect(found.operatingPoint.amps).toBeGreaterThan(5.25);
    expect(found.operatingPoint.amps).toBeLessThan(5.4);
    expect(found.of('full-load-current')).toMatchObject({ grade, need: ratedA, unit: 'A' });
    expect(found.of('full-load-current')?.have).toBeCloseTo(ratedA === 5 ? 5.34 : 6.6, 2);
    isWellFormed(found);
  });
});

test('supply volts not told: which of two currents holds is a reading, not a block by the wrong one', () => {
  const ratings = [
    { volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 },
    { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 },
  ];
  const found = judged(nema, { both: { ratings }, set: { supply: { volts: null, contactorA: 10 } } });
  expect(found.of('full-load-current')).toMatchObject({ grade: 'check', have: null, by: 'reading' });
  expect(found.verdict).toBe('check-first');
  isWellFormed(found);
});

describe('the contactor of a star-delta starter: 15 A in the line, 8.7 A in the delta', () => {
  const ratings = [{ volts: 400, hertz: 50, kw: 7.5, rpm: 1450, amps: 15, connection: 'delta' }];
  test.each([
    ['phase', 9, 'ok'], // the overload hangs on the contactor: both in the delta
    ['phase', 8.6, 'block'],
    ['line', 15, 'ok'],
    ['line', 9, 'check'], // where the contactor stands is not told
    ['line', 8.6, 'block'],
  ])('overload in the %s, contactor %d A: %s', (overloadIn, contactorA, grade) => {
    const supply = {
      start: 'star-delta',
      overloadIn,
      overloadMinA: 8,
      overloadMaxA: 18,
      contactorA,
      cableA: 25,
    };
    const found = judged(iec, { both: { ratings, winding: 'star-delta-6' }, set: { supply, load: EASY } });
    expect(found.of('full-load-current')?.grade).toBe(grade);
    isWellFormed(found);
  });
});
