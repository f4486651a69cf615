import { describe, expect, test } from 'vitest';
import { breakaway } from '@/lib/matching/criteria/load/breakaway';
import { minimumTorque } from '@/lib/standards/minimum-torque';
import { kwOfHp } from '@/lib/units/power';
import { nmOfLbft, torqueNmOf } from '@/lib/units/torque';
import { motor, set } from '../matching/easy';
import { asked } from '../matching/load/asked';

const pctOf = (...[kind, design, kw, poles]: Parameters<typeof minimumTorque>) =>
  minimumTorque(kind, design, kw, poles)?.pct ?? null;

// NEMA MG 1-12.38, 12.39 and 12.40, designs A and B, 60 Hz. 3 to 20 hp at 2 and 4 poles: read in one text.
describe('NEMA MG 1-12.38 to 12.40, read in one text', () => {
  test.each([
    // hp, poles, locked-rotor, breakdown, pull-up
    [3, 2, 160, 230, 110],
    [3, 4, 215, 250, 150],
    [5, 2, 150, 215, 105],
    [5, 4, 185, 225, 130],
    [7.5, 2, 140, 200, 100],
    [7.5, 4, 175, 215, 120],
    [10, 2, 135, 200, 100],
    [10, 4, 165, 200, 115],
    [20, 2, 130, 200, 100],
    [20, 4, 150, 200, 105],
  ])('%s hp, %s poles: %s, %s and %s %%', (hp, poles, locked, breakdown, pullUp) => {
    for (const design of ['A', 'B'] as const) {
      expect(pctOf('locked-rotor', design, kwOfHp(hp), poles)).toBe(locked);
      expect(pctOf('breakdown', design, kwOfHp(hp), poles)).toBe(breakdown);
      expect(pctOf('pull-up', design, kwOfHp(hp), poles)).toBe(pullUp);
    }
  });
});

// The rest of the three tables: from memory.
describe('NEMA MG 1-12.38 to 12.40, from memory', () => {
  test.each([
    [1, 4, 275, 300, 190],
    [1.5, 6, 165, 250, 115],
    [2, 8, 130, 210, 100],
    [50, 4, 140, 200, 100],
    [100, 2, 105, 200, 95],
    [100, 6, 125, 200, 100],
    [200, 4, 100, 200, 90],
    [500, 2, 70, 175, 65],
  ])('%s hp, %s poles: %s, %s and %s %%', (hp, poles, locked, breakdown, pullUp) => {
    expect(pctOf('locked-rotor', 'B', kwOfHp(hp), poles)).toBe(locked);
    expect(pctOf('breakdown', 'B', kwOfHp(hp), poles)).toBe(breakdown);
    expect(pctOf('pull-up', 'B', kwOfHp(hp), poles)).toBe(pullUp);
  });

  test.each([
    [5, 4, 255],
    [10, 6, 225],
    [50, 4, 200],
    [200, 8, 200],
  ])('design C, %s hp, %s poles: locked-rotor %s %%', (hp, poles, locked) => {
    expect(pctOf('locked-rotor', 'C', kwOfHp(hp), poles)).toBe(locked);
  });
});

test('design D, 4 to 8 poles up to 150 hp: locked-rotor 275 % (MG 1-12.38, read in one text)', () => {
  expect(pctOf('locked-rotor', 'D', kwOfHp(50), 6)).toBe(275);
  expect(pctOf('locked-rotor', 'D', kwOfHp(200), 6)).toBeNull();
  expect(pctOf('locked-rotor', 'D', kwOfHp(5), 2)).toBeNull();
});

test('nothing is promised where the standard prints nothing', () => {
  expect(pctOf('locked-rotor', 'B', kwOfHp(0.5), 4)).toBeNull();
  expect(pctOf('locked-rotor', 'B', kwOfHp(400), 6)).toBeNull();
  expect(pctOf('locked-rotor', 'E', kwOfHp(5), 4)).toBeNull();
  expect(pctOf('pull-up', 'C', kwOfHp(5), 4)).toBeNull();
});

test('a kW plate finds its horsepower: 3.7 and 3.73 kW are 5 hp, 4 kW takes the 7.5 hp figure', () => {
  expect(pctOf('locked-rotor', 'B', 3.7, 4)).toBe(185);
  expect(pctOf('locked-rotor', 'B', 3.73, 4)).toBe(185);
  expect(pctOf('locked-rotor', 'B', 4, 4)).toBe(175);
});

// IEC 60034-12 Table 1, design N, per unit of rated torque.
describe('IEC 60034-12 design N', () => {
  test.each([
    // kW, poles, locked-rotor, breakdown, pull-up: 2 and 4 poles, read in one text
    [2.2, 2, 1.7, 2, 1.1],
    [2.2, 4, 1.8, 2, 1.2],
    [3.7, 2, 1.6, 2, 1.1],
    [3.7, 4, 1.7, 2, 1.2],
    [5.5, 2, 1.5, 2, 1],
    [5.5, 4, 1.6, 2, 1.1],
    [11, 2, 1.4, 2, 1],
    [11, 4, 1.5, 2, 1.1],
    // from memory
    [5.5, 6, 1.5, 1.9, 1.1],
    [30, 4, 1.3, 1.9, 1],
    [75, 4, 1.1, 1.8, 0.8],
    [132, 2, 0.9, 1.7, 0.7],
  ])('%s kW, %s poles: %s, %s and %s', (kw, poles, locked, breakdown, pullUp) => {
    expect(pctOf('locked-rotor', 'N', kw, poles)).toBeCloseTo(100 * locked, 9);
    expect(pctOf('breakdown', 'N', kw, poles)).toBeCloseTo(100 * breakdown, 9);
    expect(pctOf('pull-up', 'N', kw, poles)).toBeCloseTo(100 * pullUp, 9);
  });

  test('a band reaches up to and including its upper end: 4 kW is still in the one above 2.5', () => {
    expect(pctOf('locked-rotor', 'N', 4, 4)).toBeCloseTo(170, 9);
    expect(pctOf('locked-rotor', 'N', 4.01, 4)).toBeCloseTo(160, 9);
  });
});

describe('full-load torque', () => {
  test.each([
    // Public motor data sheets; makers withheld.
    [7.5, 2940, 24.4],
    [15, 2960, 48.4],
    [22, 2970, 70.6],
  ])('%s kW at %s rpm: %s N·m (data sheet, read in one text)', (kw, rpm, nm) => {
    expect(Math.abs(torqueNmOf(kw, rpm) / nm - 1)).toBeLessThan(0.005);
  });

  test('T = 9550 kW / n (read in two texts)', () => {
    expect(torqueNmOf(1, 9550)).toBeCloseTo(1, 3);
  });

  test('T = 5252 hp / n in lbf·ft (read in two texts); 3 hp at 1740 rpm: 9.1 (data sheet)', () => {
    expect(torqueNmOf(kwOfHp(1), 5252)).toBeCloseTo(nmOfLbft(1), 3);
    expect(torqueNmOf(kwOfHp(3), 1740) / nmOfLbft(1)).toBeCloseTo(9.1, 1);
  });

  test('25 hp at 1750 rpm: 75 lbf·ft (exercise, from memory)', () => {
    expect(torqueNmOf(kwOfHp(25), 1750) / nmOfLbft(1)).toBeCloseTo(75, 0);
  });
});

// What a starter leaves of the torque, shown through the criterion; 220 % plated, T_fl = 20.346 N·m.
describe('torque at the start', () => {
  const start = (supply: object, plated: object = {}) =>
    asked(breakaway, set({ supply }), motor({ lockedRotorPct: 220, ...plated }))?.have;
  const pct = (nm: unknown) => (typeof nm === 'number' ? (100 * nm) / 20.3455 : null);

  test('star-delta: a third; 220 % becomes 73.3 % (read in two texts)', () => {
    expect(pct(start({ start: 'star-delta' }))).toBeCloseTo(73.3, 1);
  });

  test('a limit of half the locked-rotor current leaves a quarter of the torque (read in one text)', () => {
    // Letter J at most: 7.99·5 hp is 50.14 A at 460 V; half of it is 100 % of 25.07 plate amps.
    const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 50.1413 / 6 }];
    expect(pct(start({ start: 'soft', softStartLimitPct: 300 }, { ratings }))).toBeCloseTo(55, 1);
  });

  test('at 80 % of the volts 64 % of the torque is left (read in one text)', () => {
    expect(pct(start({ measuredVolts: 368 }))).toBeCloseTo(220 * 0.64, 1);
  });
});
