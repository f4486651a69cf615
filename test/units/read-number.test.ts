import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figure } from '@/lib/units/figure';
import { readNumber } from '@/lib/units/read-number';

const ANY = { min: 0.001, max: 1e9 };
const SPEED = { min: 20, max: 24_000 };
const POWER = { min: 0.01, max: 900 };

const says = (text: string, bounds = ANY) => {
  const read = readNumber(text, bounds);
  return read.ok ? null : read.problems.map((one) => one.says).join(' | ');
};

describe('a figure as people write it', () => {
  test.each([
    ['5', 5],
    ['007', 7],
    ['7.5', 7.5],
    ['7,5', 7.5],
    ['.85', 0.85],
    [',85', 0.85],
    ['0.746', 0.746],
    ['0,746', 0.746],
    ['12.50', 12.5],
    ['1450', 1450],
    ['1,450.5', 1450.5],
    ['1.450,5', 1450.5],
    ["1'450", 1450],
    ['1 450', 1450],
    ['1,234,567', 1_234_567],
    ['1.234.567', 1_234_567],
    ['1 234 567', 1_234_567],
    ['  460 ', 460],
  ])('%j is %s', (text, value) => {
    expect(readNumber(text, ANY)).toEqual({ ok: true, value, doubts: [] });
  });

  test.each([
    ['½', 0.5],
    ['7½', 7.5],
    ['7 ½', 7.5],
    ['7-½', 7.5],
    ['1⅛', 1.125],
    ['2⅞', 2.875],
    ['1/2', 0.5],
    ['3/4', 0.75],
    ['7 1/2', 7.5],
    ['7-1/2', 7.5],
    ['1-5/8', 1.625],
    ['1 15/16', 1.9375],
    ['7 1⁄2', 7.5],
  ])('the fraction %j is %s', (text, value) => {
    expect(readNumber(text, ANY)).toEqual({ ok: true, value, doubts: [] });
  });
});

describe('a figure that is not taken, and why', () => {
  test.each([
    ['', 'is not a figure'],
    ['-5', 'is not a figure'],
    ['+5', 'is not a figure'],
    ['−5', 'is not a figure'],
    ['1e3', 'is not a figure'],
    ['0x10', 'is not a figure'],
    ['NaN', 'is not a figure'],
    ['Infinity', 'is not a figure'],
    ['5 5', 'is not a figure'],
    ['5..5', 'is not a figure'],
    ['1.2.3', 'is not a figure'],
    ['1,23,456', 'is not a figure'],
    ['1,450,50', 'is not a figure'],
    ['1 45', 'is not a figure'],
    ['5.', 'is not a figure'],
    ['3/2', 'is not a figure'],
    ['5/5', 'is not a figure'],
    ['0/2', 'is not a figure'],
    ['٣', 'is not a figure'],
    ['1450x', 'is not a figure'],
    ['1'.repeat(25), 'is too long for a figure'],
  ])('%j %s', (text, why) => {
    expect(says(text)).toBe(why);
  });

  test.each([
    ['O.85', '0.85'],
    ['l750', '1750'],
    ['I450', '1450'],
    ['1O', '10'],
    ['46o', '460'],
    ['|8', '18'],
  ])('%j looks like %s and is not taken', (text, likely) => {
    expect(says(text)).toBe(`is not a figure: it looks like ${likely}; write it if the plate says so`);
  });

  test.each([
    ['19', SPEED, 'is not between 20 and 24000'],
    ['24001', SPEED, 'is not between 20 and 24000'],
    ['0', POWER, 'is not between 0.01 and 900'],
  ])('%j within %j: %s', (text, bounds, why) => {
    expect(says(text, bounds)).toBe(why);
  });
});

describe('one sign before exactly three digits', () => {
  test('"1,450" as a speed is 1450, without a doubt', () => {
    expect(readNumber('1,450', SPEED)).toEqual({ ok: true, value: 1450, doubts: [] });
  });

  test('"1.450" as a speed is 1450: 1.45 rpm is not possible, and the choice is told', () => {
    const read = readNumber('1.450', SPEED);
    expect(read).toMatchObject({ ok: true, value: 1450 });
    expect(read.ok && read.doubts.map((one) => one.says)).toEqual([
      'could be 1.45 (dot as decimal sign) or 1450 (dot as thousands sign); read as 1450, the other is not possible here',
    ]);
  });

  test('"1.125" as a power below 900 is 1.125, without a doubt', () => {
    expect(readNumber('1.125', POWER)).toEqual({ ok: true, value: 1.125, doubts: [] });
  });

  test('"1,125" as a power below 900 is 1.125, and the choice is told', () => {
    expect(readNumber('1,125', POWER)).toMatchObject({ ok: true, value: 1.125, doubts: [{ value: '1,125' }] });
  });

  test.each(['1,450', '1.450'])('%j is a problem naming both where both are possible', (text) => {
    expect(says(text, { min: 1, max: 2000 })).toMatch(
      /^could be 1\.45 \((dot|comma) as decimal sign\) or 1450 \(\1 as thousands sign\)$/,
    );
  });

  test('"30.000" is a problem where neither is possible', () => {
    expect(says('30.000', { min: 100, max: 1000 })).toMatch(/; neither is possible here$/);
  });

  test('"0.750" and "012.500" are no thousands', () => {
    expect(readNumber('0.750', ANY)).toEqual({ ok: true, value: 0.75, doubts: [] });
    expect(readNumber('012.500', ANY)).toEqual({ ok: true, value: 12.5, doubts: [] });
  });

  test('whatever the figure: it is what one of the two signs means, or a problem', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999 }),
        fc.integer({ min: 0, max: 999 }),
        fc.constantFrom('.', ','),
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 2000, max: 2_000_000 }),
        (whole, rest, sign, min, max) => {
          const three = String(rest).padStart(3, '0');
          const decimal = Number(`${whole}.${three}`);
          const thousands = whole * 1000 + rest;
          const possible = [decimal, thousands].filter((one) => one >= min && one <= max);
          const read = readNumber(`${whole}${sign}${three}`, { min, max });
          expect(read.ok).toBe(possible.length === 1);
          if (read.ok) expect(read.value).toBe(possible[0]);
        },
      ),
    );
  });
});

describe('what is printed is read back', () => {
  test('a figure of two decimals', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), (hundredths) => {
        const value = hundredths / 100;
        const read = readNumber(figure(value), ANY);
        expect(read).toEqual({ ok: true, value, doubts: [] });
      }),
    );
  });

  test('with a comma for the point too', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), (hundredths) => {
        const value = hundredths / 100;
        expect(readNumber(figure(value).replace('.', ','), ANY)).toEqual({ ok: true, value, doubts: [] });
      }),
    );
  });

  test('a whole figure however its thousands are written', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1_000_000, max: 999_999_999 }),
        fc.constantFrom(',', '.', "'", ' '),
        (value, sign) => {
          const grouped = String(value).replace(/\B(?=(\d{3})+$)/g, sign);
          expect(readNumber(grouped, ANY)).toEqual({ ok: true, value, doubts: [] });
        },
      ),
    );
  });

  test('any text: a value within the bounds, or a problem with the text in it', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40, unit: 'binary' }), (text) => {
        const read = readNumber(text, SPEED);
        if (read.ok) expect(read.value >= SPEED.min && read.value <= SPEED.max).toBe(true);
        else expect(read.problems.length).toBe(1);
      }),
    );
  });
});
