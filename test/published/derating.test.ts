import { describe, expect, test } from 'vitest';
import { deratingOf } from '@/lib/matching/context/derating';
import { power } from '@/lib/matching/criteria/load/power';
import { ambientAltitudeFactor } from '@/lib/standards/ambient-altitude-factor';
import { lowSpeedTorque } from '@/lib/standards/low-speed-torque';
import { unbalanceFactor } from '@/lib/standards/unbalance-factor';
import { kwOfHp } from '@/lib/units/power';
import { motor, set } from '../matching/easy';
import { asked } from '../matching/load/asked';

const FEET = 0.3048;

// NEMA MG 1 14.2.1 and IEC 60034-1 6: 40 °C and 1000 m are usual service (read in two texts).
test.each([
  [40, 1000],
  [40, 0],
  [20, 500],
  [-15, 1000],
])('no derating at %s °C and %s m', (ambientC, altitudeM) => {
  expect(deratingOf(set({ surroundings: { ambientC, altitudeM } }), motor()).factor).toBe(1);
});

// A motor application manual, reduction factors for ambient and altitude (read in one text).
describe('ambient and altitude together', () => {
  test.each([
    [30, 1000, 1.06],
    [35, 2000, 0.97],
    [40, 1500, 0.97],
    [40, 4000, 0.77],
    [45, 1000, 0.96],
    [45, 2500, 0.86],
    [50, 2000, 0.86],
    [55, 3500, 0.71],
    [30, 4000, 0.82],
    [60, 1000, 0.82],
    [60, 4000, 0.63],
  ])('%s °C at %s m: %s', (ambientC, altitudeM, factor) => {
    expect(ambientAltitudeFactor(ambientC, altitudeM)).toBe(factor);
  });

  // The manual's own examples: brake hp over the factor, then the next rating.
  test.each([
    [50, 2000, 25, 30],
    [55, 3500, 130, 200],
    [30, 4000, 7, 10],
  ])('%s °C at %s m, %s hp asked: %s hp is chosen, the rating below is not enough', (ambientC, altitudeM, bhp, hp) => {
    const below = { 30: 25, 200: 150, 10: 7.5 }[hp] ?? 0;
    const at = set({
      failed: null,
      load: { shaftKw: kwOfHp(bhp), atPumpRpm: 1750 },
      surroundings: { ambientC, altitudeM },
    });
    const rated = (of: number) =>
      motor({ serviceFactor: null, ratings: [{ volts: 460, hertz: 60, hp: of, rpm: 1750 }] });
    expect(asked(power, at, rated(hp))?.grade).toBe('ok');
    expect(asked(power, at, rated(below))?.grade).toBe('block');
  });
});

// Altitude bands at 40 °C, with a worked 50 hp at 6000 ft (a web note, read in one text): 3300, 5000, 6600, 8300, 9900 and
// 11 500 ft. The manual's metres are these bands rounded, so heights inside both are taken.
describe('altitude in feet', () => {
  test.each([
    [3200, 1],
    [4900, 0.97],
    [6000, 0.94],
    [6500, 0.94],
    [8200, 0.9],
    [9800, 0.86],
    [11_400, 0.82],
  ])('%s ft: %s', (feet, factor) => {
    expect(ambientAltitudeFactor(40, feet * FEET)).toBe(factor);
  });

  test('50 hp at 6000 ft and 40 °C carries 47 hp', () => {
    const { factor } = deratingOf(set({ surroundings: { ambientC: 40, altitudeM: 6000 * FEET } }), motor());
    expect(50 * factor).toBeCloseTo(47, 9);
  });

  test('3 % of output for each 500 m above 1000 m, within 0.02 to 3000 m (rule read in one text)', () => {
    for (const [altitudeM, steps] of [
      [1500, 1],
      [2000, 2],
      [2500, 3],
      [3000, 4],
    ] as const)
      expect(Math.abs((ambientAltitudeFactor(40, altitudeM) ?? 0) - (1 - 0.03 * steps))).toBeLessThanOrEqual(0.0200001);
  });
});

// NEMA MG 1 14.4: full output at height where the air is cooler: 2000 m at 30 °C (pair from memory; the manual's table has 1.00).
test('2000 m at 30 °C needs no derating', () => {
  expect(deratingOf(set({ surroundings: { ambientC: 30, altitudeM: 2000 } }), motor()).factor).toBe(1);
});

// NEMA MG 1 14.36.2, Figure 14-1, a drawn curve: readings differ by up to 0.02.
describe('voltage unbalance', () => {
  test.each([
    [0, 1, 'read in one text'],
    [1, 1, 'read in two texts: no derating up to 1 %'],
    [1.5, 0.97, 'read in one text'],
    [2, 0.95, 'read in two texts'],
    [2.5, 0.93, 'read in one text'],
    [3, 0.89, 'read in one text; 0.88 and 0.90 are also printed'],
    [4, 0.82, 'read in one text'],
    [5, 0.76, 'read in one text; 0.75 is also printed'],
  ])('%s %%: %s (%s)', (pct, factor) => {
    expect(Math.abs((unbalanceFactor(pct) ?? 0) - factor)).toBeLessThanOrEqual(0.005);
  });

  test('above 5 % running is not recommended (read in one text)', () => {
    expect(unbalanceFactor(5.1)).toBeNull();
  });

  test('deratings multiply: 2 % at 50 °C leaves 0.95·0.92', () => {
    const at = set({ surroundings: { ambientC: 50 }, supply: { unbalancePct: 2 } });
    expect(deratingOf(at, motor()).factor).toBeCloseTo(0.95 * 0.92, 9);
  });
});

// Torque of fan-cooled motors at low speed: a guidance curve, from memory.
test.each([
  [1, 1],
  [0.75, 0.95],
  [0.5, 0.85],
  [0.33, 0.72],
  [0.25, 0.65],
  [0.1, 0.45],
])('a fan-cooled motor at %s of its speed gives %s of its torque (from memory)', (speedPu, share) => {
  expect(lowSpeedTorque(speedPu)).toBeCloseTo(share, 9);
});
