import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure } from '@/lib/units/figure';
import { hpOfKw, kwOfHp } from '@/lib/units/power';
import { readPower, type WrittenPower } from '@/lib/units/read-power';

const why = (text: string) => {
  const read = readPower(text);
  return read.ok ? null : read.problems.map((one) => one.says);
};

describe('powers as stamped', () => {
  test.each([
    ['7½ HP', [{ hp: 7.5 }]],
    ['7-1/2 HP', [{ hp: 7.5 }]],
    ['7 1/2 HP', [{ hp: 7.5 }]],
    ['7.5 hp', [{ hp: 7.5 }]],
    ['1/2 HP', [{ hp: 0.5 }]],
    ['¾hp', [{ hp: 0.75 }]],
    ['.75 HP', [{ hp: 0.75 }]],
    ['5 H.P.', [{ hp: 5 }]],
    ['5 horsepower', [{ hp: 5 }]],
    ['5.5kW', [{ kw: 5.5 }]],
    ['7,5 kW', [{ kw: 7.5 }]],
    ['7.5 KW', [{ kw: 7.5 }]],
    ['0,55 kW', [{ kw: 0.55 }]],
    ['5 kilowatts', [{ kw: 5 }]],
    ['370 W', [{ kw: 0.37 }]],
    ['750W', [{ kw: 0.75 }]],
    ['1,100 W', [{ kw: 1.1 }]],
    ['4.8/5.5 kW', [{ kw: 4.8 }, { kw: 5.5 }]],
    ['4,8/5,5 kW', [{ kw: 4.8 }, { kw: 5.5 }]],
    ['5/7.5 HP', [{ hp: 5 }, { hp: 7.5 }]],
    ['10/2.5 HP', [{ hp: 10 }, { hp: 2.5 }]],
  ] as [string, WrittenPower[]][])('%j', (text, value) => {
    expect(readPower(text)).toEqual({ ok: true, value, doubts: [] });
  });

  // Metric horsepower: 75 kgf·m/s, 0.73549875 kW. DIN 66036 (from memory).
  test.each([
    ['10 PS', 7.355],
    ['10 CV', 7.355],
    ['10 ch', 7.355],
    ['1 PS', 0.735],
    ['5,5 PS', 4.045],
  ])('%j is metric horsepower, in kW', (text, kw) => {
    const read = readPower(text);
    expect(read.ok && read.value).toEqual([{ kw }]);
  });
});

describe('powers that are not taken, and why', () => {
  test.each([
    ['5', ['could be 5 hp or 5 kW: write the unit']],
    ['7,5', ['could be 7,5 hp or 7,5 kW: write the unit']],
    ['', ['is not a power: write it as 7.5 hp or 5.5 kW']],
    ['0 HP', ['is not between 0.01 and 15000']],
    ['-5 hp', ['is not a figure']],
    ['5//7 kW', ['is not a figure']],
    ['five hp', ['is not a figure']],
    ['1O HP', ['is not a figure: it looks like 10; write it if the plate says so']],
    ['l5 kW', ['is not a figure: it looks like 15; write it if the plate says so']],
    ['1,125 kW', ['could be 1.125 (comma as decimal sign) or 1125 (comma as thousands sign)']],
    ['1.125 kW', ['could be 1.125 (dot as decimal sign) or 1125 (dot as thousands sign)']],
    ['0 W', ['is not between 10 and 100000']],
    ['x/y kW', ['is not a figure', 'is not a figure']],
  ])('%j', (text, says) => {
    expect(why(text)).toEqual(says);
  });
});

describe('entries in hp and in kW agree', () => {
  test('a power typed in hp and its exact kW are the same power', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 100_000 }), (hundredths) => {
        const hp = hundredths / 100;
        const inHp = readPower(`${figure(hp)} HP`);
        const inKw = readPower(`${kwOfHp(hp).toFixed(6)} kW`);
        expect(inHp).toEqual({ ok: true, value: [{ hp }], doubts: [] });
        if (!inKw.ok) throw new Error(inKw.problems[0]?.says);
        const kw = (inKw.value[0] as { kw: number }).kw;
        expect(Math.abs(kw - kwOfHp(hp))).toBeLessThan(1e-6);
        expect(Math.abs(hpOfKw(kw) - hp)).toBeLessThan(2e-6);
      }),
    );
  });

  test('watts and kilowatts agree', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 99_999 }), (w) => {
        const read = readPower(`${w} W`);
        expect(read).toEqual({ ok: true, value: [{ kw: w / 1000 }], doubts: [] });
      }),
    );
  });
});
