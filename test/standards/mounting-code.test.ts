import { describe, expect, test } from 'vitest';
import { mountingCode } from '@/lib/standards/mounting-code';

const read = (text: string) => {
  const code = mountingCode(text);
  if (!code.ok) throw new Error(code.problems.map(({ says }) => says).join('; '));
  return code.value;
};

/** IEC 60034-7:2020 clauses 4 and 5: Code I, Code II, feet, flange at the drive end, shaft. From memory where marked. */
describe('every IM code tells feet, face and shaft', () => {
  test.each([
    ['IM B3', 'IM 1001', true, 'none', 'horizontal'],
    ['IM B6', 'IM 1051', true, 'none', 'horizontal'],
    ['IM B7', 'IM 1061', true, 'none', 'horizontal'],
    ['IM B8', 'IM 1071', true, 'none', 'horizontal'],
    ['IM V5', 'IM 1011', true, 'none', 'down'],
    ['IM V6', 'IM 1031', true, 'none', 'up'],
    ['IM B5', 'IM 3001', false, 'FF', 'horizontal'],
    ['IM V1', 'IM 3011', false, 'FF', 'down'],
    ['IM V3', 'IM 3031', false, 'FF', 'up'],
    ['IM B14', 'IM 3601', false, 'FT', 'horizontal'],
    ['IM V18', 'IM 3611', false, 'FT', 'down'],
    ['IM V19', 'IM 3631', false, 'FT', 'up'],
    ['IM B35', 'IM 2001', true, 'FF', 'horizontal'],
    ['IM V15', 'IM 2011', true, 'FF', 'down'],
    ['IM V35', 'IM 2031', true, 'FF', 'up'], // V35 against V36: from memory
    ['IM B34', 'IM 2101', true, 'FT', 'horizontal'],
    ['IM V17', 'IM 2111', true, 'FT', 'down'], // from memory
    ['IM V37', 'IM 2131', true, 'FT', 'up'], // from memory
    ['IM B9', 'IM 9101', false, null, 'horizontal'], // from memory, as the rest
    ['IM V8', 'IM 9111', false, null, 'down'],
    ['IM V9', 'IM 9131', false, null, 'up'],
    ['IM B10', 'IM 4001', false, null, 'horizontal'],
    ['IM V10', 'IM 4011', false, null, 'down'],
    ['IM V14', 'IM 4031', false, null, 'up'],
    ['IM B15', 'IM 1201', true, null, 'horizontal'],
    ['IM B20', 'IM 1101', true, 'none', 'horizontal'],
    ['IM B25', 'IM 2401', true, 'FF', 'horizontal'],
    ['IM B30', 'IM 9201', false, null, 'horizontal'],
    ['IM V2', 'IM 3231', false, 'none', 'up'],
    ['IM V4', 'IM 3211', false, 'none', 'down'],
  ])('%s and %s', (codeI, codeII, feet, face, shaft) => {
    for (const text of [codeI, codeII, codeI.replace('IM ', ''), codeI.toLowerCase(), codeII.replace(' ', '')])
      expect(read(text)).toMatchObject({ feet, face, shaft });
  });

  test('IM V36 is the older name of IM V35', () => {
    const { name: older, ...v36 } = read('IM V36');
    const { name: newer, ...v35 } = read('IM V35');
    expect([older, newer]).toEqual(['IM V36', 'IM V35']);
    expect(v36).toEqual(v35);
  });

  // IEC 60034-7 clause 5: the last digit is the shaft end; 3 and 4 are conical (from memory).
  test('the last figure of Code II tells a conical shaft end', () => {
    expect([1, 2, 3, 4].map((end) => read(`IM 100${end}`).isTaper)).toEqual([false, false, true, true]);
    expect(mountingCode('IM 1005').ok).toBe(false);
  });

  test('a wall or ceiling motor is listed for its own place only', () => {
    expect(read('IM B6').positions).toEqual(['wall']);
    expect(read('IM B8').positions).toEqual(['ceiling']);
    expect(read('IM V5').positions).toEqual(['down', 'wall']);
    expect(read('IM B3').positions).toEqual(['horizontal']);
  });
});

describe('several codes on one motor', () => {
  test.each([
    ['B3/B5', true, 'FF', 'horizontal', 'IM B3/B5'],
    ['B3/5', true, 'FF', 'horizontal', 'IM B3/B5'],
    ['IM B5/V1', false, 'FF', null, 'IM B5/V1'],
    ['V5/6', true, 'none', null, 'IM V5/V6'],
    ['IM B35 (IM 2001)', true, 'FF', 'horizontal', 'IM B35'],
    ['IM B3 IM 1001', true, 'none', 'horizontal', 'IM B3'],
  ])('%s', (text, feet, face, shaft, name) => {
    expect(read(text)).toMatchObject({ feet, face, shaft, name });
  });

  test('free and tapped holes at one drive end are refused', () => {
    const code = mountingCode('B5/B14');
    expect(code.ok).toBe(false);
    if (!code.ok) expect(code.problems[0]?.says).toContain('one drive end has one of them');
  });
});

/** NEMA MG 1-2016 Part 4, Figure 4-6, box seen from the drive end, feet down. F-1 and F-3 read in one text, F-2 from memory. */
describe('a NEMA assembly symbol tells the terminal box', () => {
  test.each([
    ['F-1', 'left'],
    ['F1', 'left'],
    ['F-2', 'right'],
    ['f 2', 'right'],
    ['F-3', 'top'],
  ])('%s: %s', (text, terminalBox) => {
    expect(read(text)).toMatchObject({ terminalBox, feet: true, shaft: 'horizontal' });
  });

  test('wall and ceiling symbols tell the place; the upright ones not which way the shaft points', () => {
    expect(read('W-2')).toMatchObject({ positions: ['wall'], shaft: 'horizontal', terminalBox: null });
    expect(read('W-6')).toMatchObject({ positions: ['wall'], shaft: null });
    expect(read('C-1')).toMatchObject({ positions: ['ceiling'], shaft: 'horizontal' });
  });
});

test.each([
  ['foot', true, null],
  ['Rigid base', true, null],
  ['face', false, true],
  ['round-body', false, true],
  ['foot-and-face', true, true],
])('plain words: %s', (text, feet, hasFace) => {
  expect(read(text)).toMatchObject({ feet, hasFace, isIec: false });
});

test.each(['', '  ', 'B', 'B99', 'IM 9999', 'F-4', 'C-3', 'W-9', 'IM', 'sideways', 'B3/B99'])(
  'not a mounting: %j',
  (text) => {
    const code = mountingCode(text);
    expect(code.ok).toBe(false);
    if (!code.ok) expect(code.problems[0]).toMatchObject({ path: 'mounting' });
  },
);
