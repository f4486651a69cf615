import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure } from '@/lib/units/figure';
import { readAmps } from '@/lib/units/read-amps';
import { readHertz } from '@/lib/units/read-hertz';
import { readLength } from '@/lib/units/read-length';
import { readMass } from '@/lib/units/read-mass';
import { readTemperature } from '@/lib/units/read-temperature';

const whyOf = (read: { ok: true } | { ok: false; problems: { says: string }[] }) =>
  read.ok ? null : read.problems.map((one) => one.says).join(' | ');

describe('frequencies', () => {
  test.each([
    ['50', [50]],
    ['60 Hz', [60]],
    ['60HZ', [60]],
    ['50~', [50]],
    ['60 CYC', [60]],
    ['60 cycles', [60]],
    ['60 c/s', [60]],
    ['50/60 Hz', [50, 60]],
    ['60/50', [60, 50]],
    ['50 Hz/60 Hz', [50, 60]],
    ['87 Hz', [87]],
    ['87,5', [87.5]],
  ])('%j', (text, value) => {
    expect(readHertz(text)).toEqual({ ok: true, value, doubts: [] });
  });

  test.each([
    ['', 'has no figure for the frequency'],
    ['Hz', 'has no figure for the frequency'],
    ['4', 'is not between 5 and 400'],
    ['500 Hz', 'is not between 5 and 400'],
    ['6O', 'is not a figure: it looks like 60; write it if the plate says so'],
    ['50/', 'is not a figure'],
    ['50-60', 'is not a figure'],
  ])('%j: %s', (text, says) => {
    expect(whyOf(readHertz(text))).toBe(says);
  });
});

describe('currents', () => {
  test.each([
    ['6.6', [[6.6]]],
    ['6.6 A', [[6.6]]],
    ['6,6A', [[6.6]]],
    ['13.2/6.6 A', [[13.2], [6.6]]],
    ['13.2/6.6', [[13.2], [6.6]]],
    ['20,9/12,1', [[20.9], [12.1]]],
    ['13.2 A/6.6 A', [[13.2], [6.6]]],
    ['13.9-13.2/6.6', [[13.9, 13.2], [6.6]]],
    ['14.4 - 13.2 AMPS', [[14.4, 13.2]]],
    ['.9', [[0.9]]],
  ])('%j', (text, value) => {
    expect(readAmps(text)).toEqual({ ok: true, value, doubts: [] });
  });

  test.each([
    ['', 'has no figure for the current'],
    ['A', 'has no figure for the current'],
    ['0', 'is not between 0.01 and 5000'],
    ['6000 A', 'is not between 0.01 and 5000'],
    ['6.6x', 'is not a figure'],
    ['l3.2', 'is not a figure: it looks like 13.2; write it if the plate says so'],
    ['1.250 A', 'could be 1.25 (dot as decimal sign) or 1250 (dot as thousands sign)'],
    ['1,250 A', 'could be 1.25 (comma as decimal sign) or 1250 (comma as thousands sign)'],
  ])('%j: %s', (text, says) => {
    expect(whyOf(readAmps(text))).toBe(says);
  });
});

describe('temperatures', () => {
  test.each([
    ['40', 40],
    ['40C', 40],
    ['40 °C', 40],
    ['40°C', 40],
    ['40 ºC', 40],
    ['40 deg C', 40],
    ['40 deg. C', 40],
    ['-20 °C', -20],
    ['−20 °C', -20],
    ['+40 °C', 40],
    ['104°F', 40],
    ['104 F', 40],
    ['122 °F', 50],
    ['-4 °F', -20],
    ['113 °F', 45],
    ['32 °F', 0],
    ['80', 80],
  ])('%j is %s °C', (text, value) => {
    expect(readTemperature(text)).toEqual({ ok: true, value, doubts: [] });
  });

  test.each([
    ['', 'is not a temperature: write it as 40 °C or 104 °F'],
    ['warm', 'is not a temperature: write it as 40 °C or 104 °F'],
    ['104', 'could be 104 °C or 104 °F: write the letter'],
    ['81', 'could be 81 °C or 81 °F: write the letter'],
    ['125 °C', 'is not an ambient between −60 °C and 120 °C'],
    ['-61 °C', 'is not an ambient between −60 °C and 120 °C'],
    ['249 °F', 'is not an ambient between −60 °C and 120 °C'],
    ['40 K', 'is not a temperature: write it as 40 °C or 104 °F'],
  ])('%j: %s', (text, says) => {
    expect(whyOf(readTemperature(text))).toBe(says);
  });
});

describe('masses', () => {
  test.each([
    ['41 kg', 41],
    ['41kg', 41],
    ['41 KGS', 41],
    ['38,5 kg', 38.5],
    ['1.2 t', 1200],
    ['90 lb', 40.82],
    ['90 LBS', 40.82],
    ['90 lbs.', 40.82],
    ['100 pounds', 45.36],
  ])('%j is %s kg', (text, value) => {
    expect(readMass(text)).toEqual({ ok: true, value, doubts: [] });
  });

  test.each([
    ['41', 'could be 41 kg or 41 lb: write the unit'],
    ['', 'is not a mass: write it as 41 kg or 90 lb'],
    ['0 kg', 'is not between 0.05 and 100000'],
    ['4l kg', 'is not a figure: it looks like 41; write it if the plate says so'],
    ['-4 kg', 'is not a figure'],
    ['1.250 kg', 'could be 1.25 (dot as decimal sign) or 1250 (dot as thousands sign)'],
  ])('%j: %s', (text, says) => {
    expect(whyOf(readMass(text))).toBe(says);
  });
});

describe('lengths', () => {
  test.each([
    ['28 mm', 28],
    ['28mm', 28],
    ['114,3 mm', 114.3],
    ['2.8 cm', 28],
    ['0.4 m', 400],
    ['1-1/8 in', 28.575],
    ['1 1/8"', 28.575],
    ['1⅛"', 28.575],
    ['1⅛ in.', 28.575],
    ['0.875 in', 22.225],
    ['.875 inch', 22.225],
    ['7/8 inches', 22.225],
    ['5″', 127],
  ])('%j is %s mm', (text, value) => {
    const read = readLength(text);
    expect(read.ok && read.value).toBeCloseTo(value, 9);
    expect(read.ok && read.doubts).toEqual([]);
  });

  test.each([
    ['28', 'could be 28 mm or 28 in: write the unit'],
    ['7/8', 'could be 7/8 mm or 7/8 in: write the unit'],
    ['', 'is not a length: write it as 28 mm or 1-1/8 in'],
    ['0 mm', 'is not between 0.001 and 100000'],
    ['2B mm', 'is not a figure'],
    ['28 ft', 'is not a figure'],
  ])('%j: %s', (text, says) => {
    expect(whyOf(readLength(text))).toBe(says);
  });
});

describe('what is printed is read back', () => {
  const tenths = fc.integer({ min: 10, max: 3_000 }).map((one) => one / 10);

  test('amps and hertz', () => {
    fc.assert(
      fc.property(fc.array(tenths, { minLength: 1, maxLength: 4 }), (all) => {
        const text = all.map((one) => figure(one)).join('/');
        expect(readAmps(`${text} A`)).toEqual({ ok: true, value: all.map((one) => [one]), doubts: [] });
        if (all.every((one) => one >= 5)) expect(readHertz(`${text} Hz`)).toEqual({ ok: true, value: all, doubts: [] });
      }),
    );
  });

  test('temperatures below and above zero, with the minus sign that figure() writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -600, max: 1200 }), (tenth) => {
        const celsius = tenth / 10;
        const read = readTemperature(`${figure(celsius, 1)} °C`);
        expect(read.ok && read.value).toBe(celsius);
      }),
    );
  });

  test('masses and lengths', () => {
    fc.assert(
      fc.property(tenths, (one) => {
        expect(readMass(`${figure(one)} kg`)).toEqual({ ok: true, value: one, doubts: [] });
        expect(readLength(`${figure(one)} mm`)).toEqual({ ok: true, value: one, doubts: [] });
      }),
    );
  });

  test('any text is read or refused, never thrown at', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'binary' }), (text) => {
        for (const read of [readAmps, readHertz, readLength, readMass, readTemperature])
          expect(typeof read(text).ok).toBe('boolean');
      }),
    );
  });
});
