import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { inchesOfMm, mmOfInches } from '@/lib/units/length';
import { kgOfPounds } from '@/lib/units/mass';
import { hpOfKw, kwOfHp, kwOfMetricHp } from '@/lib/units/power';
import { celsiusOfFahrenheit } from '@/lib/units/temperature';
import { kwOfTorque, nmOfLbft, torqueNmOf } from '@/lib/units/torque';

/** js-quantities 1.8.0 in `from` and `to`; its own factors carry nine figures, hence the millionth. */
const library = (amount: number, from: string, to: string) => Qty(amount, from).to(to).scalar;
const amount = fc.double({ min: 0.001, max: 100_000, noNaN: true });

describe('every conversion agrees with a general units library over the range of motors', () => {
  test.each([
    ['inches in mm', mmOfInches, 'in', 'mm'],
    ['mm in inches', inchesOfMm, 'mm', 'in'],
    ['pounds in kg', kgOfPounds, 'lb', 'kg'],
    ['hp in kW', kwOfHp, 'hp', 'kW'],
    ['kW in hp', hpOfKw, 'kW', 'hp'],
    ['lb·ft in N·m', nmOfLbft, 'ft*lbf', 'N*m'],
  ] as const)('%s', (_, ours, from, to) => {
    fc.assert(
      fc.property(amount, (one) => {
        const theirs = library(one, from, to);
        expect(Math.abs(ours(one) / theirs - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  test('°F in °C', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 500, noNaN: true }), (fahrenheit) => {
        expect(celsiusOfFahrenheit(fahrenheit)).toBeCloseTo(library(fahrenheit, 'tempF', 'tempC'), 6);
      }),
    );
  });

  test('torque × angular speed = power', () => {
    fc.assert(
      fc.property(amount, fc.double({ min: 10, max: 7200, noNaN: true }), (nm, rpm) => {
        const theirs = (nm * library(rpm, 'rpm', 'rad/s')) / 1000;
        expect(Math.abs(kwOfTorque(nm, rpm) / theirs - 1)).toBeLessThan(1e-6);
        expect(torqueNmOf(theirs, rpm) / nm).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('factors as standards define them', () => {
  // BIPM, The International System of Units, and NIST SP 811 appendix B.8: recalled from memory.
  test.each([
    ['1 in = 25.4 mm, exactly', mmOfInches(1), 25.4],
    ['1 lb = 0.453 592 37 kg, exactly', kgOfPounds(1), 0.45359237],
    ['1 hp (550 ft·lbf/s) = 745.6999 W', kwOfHp(1) * 1000, 745.6999],
    ['1 hp (metric) = 735.4988 W', kwOfMetricHp(1) * 1000, 735.4988],
    ['1 ft·lbf = 1.355 818 J', nmOfLbft(1), 1.355818],
    ['32 °F = 0 °C', celsiusOfFahrenheit(32), 0],
    ['104 °F = 40 °C, the ambient on most plates', celsiusOfFahrenheit(104), 40],
  ])('%s', (_, ours, printed) => {
    expect(ours).toBeCloseTo(printed, 4);
  });

  // Handbook forms of P = T·ω: T[lb·ft] = 5252·hp/rpm, T[N·m] = 9550·kW/rpm (common practice, no source).
  test('the handbook constants 5252 and 9550', () => {
    expect((torqueNmOf(kwOfHp(1), 1) / nmOfLbft(1)).toFixed(0)).toBe('5252');
    expect(torqueNmOf(1, 1)).toBeGreaterThan(9549);
    expect(torqueNmOf(1, 1)).toBeLessThan(9550);
  });
});
