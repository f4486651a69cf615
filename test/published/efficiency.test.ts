import { describe, expect, test } from 'vitest';
import { levelReached, nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import { kwOfHp } from '@/lib/units/power';

const us = (level: 'premium' | 'energy-efficient', hp: number, poles: number, build: 'enclosed' | 'open') =>
  nominalEfficiency(level, kwOfHp(hp), poles, build)?.pct ?? null;
const iec = (level: 'IE1' | 'IE2' | 'IE3' | 'IE4', kw: number, poles: number) =>
  nominalEfficiency(level, kw, poles, 'enclosed')?.pct ?? null;

// NEMA MG 1 Table 12-12, the same as 10 CFR 431.25 Table 5: read in two or more texts, but 8 poles from 50 hp and all of
// 500 hp in one.
describe('NEMA MG 1 Table 12-12, premium, 60 Hz', () => {
  test.each([
    // hp, enclosed at 2, 4, 6, 8 poles, open at 2, 4, 6, 8
    [1, [77, 85.5, 82.5, 75.5], [77, 85.5, 82.5, 75.5]],
    [1.5, [84, 86.5, 87.5, 78.5], [84, 86.5, 86.5, 77]],
    [5, [88.5, 89.5, 89.5, 86.5], [86.5, 89.5, 89.5, 88.5]],
    [10, [90.2, 91.7, 91, 89.5], [89.5, 91.7, 91.7, 90.2]],
    [20, [91, 93, 91.7, 90.2], [91, 93, 92.4, 91]],
    [50, [93, 94.5, 94.1, 92.4], [93, 94.5, 94.1, 92.4]],
    [100, [94.1, 95.4, 95, 93.6], [93.6, 95.4, 95, 94.1]],
    [200, [95.4, 96.2, 95.8, 94.5], [95, 95.8, 95.4, 94.1]],
    [500, [95.8, 96.2, null, null], [96.2, 96.2, null, null]],
  ])('%s hp', (hp, enclosed, open) => {
    [2, 4, 6, 8].forEach((poles, i) => {
      expect(us('premium', hp, poles, 'enclosed')).toBe(enclosed[i]);
      expect(us('premium', hp, poles, 'open')).toBe(open[i]);
    });
  });
});

// NEMA MG 1 Table 12-11, the older 10 CFR 431.25(a): read in two or more texts.
describe('NEMA MG 1 Table 12-11, energy efficient, 60 Hz', () => {
  test.each([
    // hp, enclosed at 2, 4, 6 poles
    [1, [75.5, 82.5, 80]],
    [5, [87.5, 87.5, 87.5]],
    [10, [89.5, 89.5, 89.5]],
    [50, [92.4, 93, 93]],
    [100, [93.6, 94.5, 94.1]],
  ])('%s hp, enclosed', (hp, enclosed) => {
    [2, 4, 6].forEach((poles, i) => {
      expect(us('energy-efficient', hp, poles, 'enclosed')).toBe(enclosed[i]);
    });
  });

  test('5 hp, 2 poles: open 85.5, enclosed 87.5', () => {
    expect(us('energy-efficient', 5, 2, 'open')).toBe(85.5);
  });
});

// IEC 60034-30-1, 50 Hz.
describe('IEC 60034-30-1', () => {
  test.each([
    // read in two texts
    ['IE1', 0.75, 4, 72.1],
    ['IE1', 7.5, 4, 86],
    ['IE2', 0.75, 2, 77.4],
    ['IE2', 4, 4, 86.6],
    ['IE2', 7.5, 6, 87.2],
    ['IE2', 55, 4, 93.5],
    ['IE3', 0.75, 4, 82.5],
    ['IE3', 2.2, 2, 85.9],
    ['IE3', 5.5, 6, 88],
    ['IE3', 22, 4, 93],
    ['IE3', 110, 4, 95.4],
    ['IE4', 7.5, 4, 92.6],
    ['IE4', 90, 4, 96.1],
    // read in one text
    ['IE1', 30, 4, 90.7],
    ['IE2', 11, 2, 89.4],
    ['IE2', 15, 8, 88],
    ['IE3', 45, 2, 94],
    ['IE3', 200, 4, 96],
    ['IE4', 160, 4, 96.6],
    // from memory
    ['IE3', 3, 8, 83.5],
    ['IE4', 4, 2, 90],
    ['IE4', 0.37, 4, 81.1],
  ] as const)('%s, %s kW, %s poles: %s %%', (level, kw, poles, pct) => {
    expect(iec(level, kw, poles)).toBe(pct);
  });

  test('above 200 kW up to 1000 one row holds (IE3, 4 poles: 96, read in one text)', () => {
    expect(iec('IE3', 500, 4)).toBe(96);
  });
});

describe('the level a plate reaches', () => {
  test.each([
    ['5 hp enclosed at 89.5 % is premium', 89.5, kwOfHp(5), 4, 60, 'premium'],
    ['5 hp enclosed at 87.5 % is energy efficient', 87.5, kwOfHp(5), 4, 60, 'energy-efficient'],
    ['5 hp enclosed at 84 % reaches neither', 84, kwOfHp(5), 4, 60, null],
    ['a 3.7 kW plate is judged as 5 hp', 89.5, 3.7, 4, 60, 'premium'],
    ['7.5 kW at 90.4 % is IE3', 90.4, 7.5, 4, 50, 'IE3'],
    ['7.5 kW at 90.3 % is IE2', 90.3, 7.5, 4, 50, 'IE2'],
    ['a frequency without a table has no level', 95, 7.5, 4, 55, null],
    ['ten poles have no level', 95, 7.5, 10, 50, null],
  ] as const)('%s', (_, pct, kw, poles, hertz, level) => {
    expect(levelReached(pct, kw, poles, hertz, 'enclosed')).toBe(level);
  });
});
