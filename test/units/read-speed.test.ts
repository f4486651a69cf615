import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSpeed } from '@/lib/units/read-speed';

const at = (rpm: number, poles: number | null = null) => ({ rpm, poles });

describe('speeds as stamped', () => {
  test.each([
    ['1450', [at(1450)]],
    ['1,450', [at(1450)]],
    ['1 450', [at(1450)]],
    ['1750 RPM', [at(1750)]],
    ['1750RPM', [at(1750)]],
    ['1750 R.P.M.', [at(1750)]],
    ['1,750 rpm', [at(1750)]],
    ['1450 r/min', [at(1450)]],
    ['1450 min-1', [at(1450)]],
    ['1450 min^-1', [at(1450)]],
    ['1450 min⁻¹', [at(1450)]],
    ['1450 1/min', [at(1450)]],
    ['1450 U/min', [at(1450)]],
    ['1450 tr/min', [at(1450)]],
    ['1450/1750', [at(1450), at(1750)]],
    ['1450/1750 RPM', [at(1450), at(1750)]],
    ['1450 / 1,750 min-1', [at(1450), at(1750)]],
    ['1500 (4P)', [at(1500, 4)]],
    ['1500 (4 P)', [at(1500, 4)]],
    ['1500(4P)', [at(1500, 4)]],
    ['1500 RPM (4P)', [at(1500, 4)]],
    ['1450 rpm 4-pole', [at(1450, 4)]],
    ['1450 rpm, 4 poles', [at(1450, 4)]],
    ['2900 2P', [at(2900, 2)]],
    ['585 (12P)', [at(585, 12)]],
  ])('%j', (text, value) => {
    expect(readSpeed(text)).toEqual({ ok: true, value, doubts: [] });
  });

  test('"1.450" is 1450 and the choice is told', () => {
    expect(readSpeed('1.450')).toMatchObject({ ok: true, value: [at(1450)], doubts: [{ value: '1.450' }] });
    expect(readSpeed('1.450/1.750 min-1')).toMatchObject({ ok: true, value: [at(1450), at(1750)], doubts: [{}, {}] });
  });
});

describe('speeds that are not taken, and why', () => {
  test.each([
    ['', 'has no figure for the speed'],
    ['RPM', 'has no figure for the speed'],
    ['19', 'is not between 20 and 24000'],
    ['25000 rpm', 'is not between 20 and 24000'],
    ['-1450', 'is not a figure'],
    ['1450-1750', 'is not a figure'],
    ['l450', 'is not a figure: it looks like 1450; write it if the plate says so'],
    ['I45O', 'is not a figure: it looks like 1450; write it if the plate says so'],
    ['145O RPM', 'is not a figure: it looks like 1450; write it if the plate says so'],
    ['1500 (3P)', '3 is not a number of poles: it is even, 2 or more'],
    ['1500 (0P)', '0 is not a number of poles: it is even, 2 or more'],
    ['1450/2900 (4P)', 'gives one number of poles for several speeds'],
    ['1450x', 'is not a figure'],
  ])('%j: %s', (text, says) => {
    const read = readSpeed(text);
    expect(read.ok ? null : read.problems.map((problem) => problem.says)).toEqual([says]);
  });
});

test('every speed and its poles are read back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 100, max: 9_999 }),
      fc.option(fc.integer({ min: 1, max: 32 }).map((half) => 2 * half)),
      fc.constantFrom('', ' rpm', ' RPM', ' min-1', ' r/min', ' 1/min'),
      fc.boolean(),
      (rpm, poles, unit, isGrouped) => {
        const written = isGrouped ? String(rpm).replace(/\B(?=(\d{3})+$)/g, ',') : String(rpm);
        const text = `${written}${unit}${poles === null ? '' : ` (${poles}P)`}`;
        expect(readSpeed(text)).toEqual({ ok: true, value: [at(rpm, poles)], doubts: [] });
      },
    ),
  );
});
