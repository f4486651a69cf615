import { expect, test } from 'vitest';
import { codeLetter } from '@/lib/plausibility/motor/code-letter';
import { withRow } from '../row';

const gradeOf = (row: Parameters<typeof withRow>[0], rest: Parameters<typeof withRow>[1] = {}) =>
  codeLetter(withRow(row, rest))?.grade ?? null;

// NEMA MG 1-12.35 (read in two texts) in kVA per hp: 10 hp 162 A at 230 V is 6.45, 15 hp 232 A is 6.16, 1 hp 30 A is 11.95.
// NEC Table 430.7(B) (read in two texts): G 5.6 to 6.29, H 6.3 to 7.09, J 7.1 to 7.99, L 9 to 9.99, M 10 to 11.19.
test.each([
  ['10 hp, H', { hp: 10, amps: 12.5 }, { codeLetter: 'H', design: 'B' }, null],
  ['10 hp, J', { hp: 10, amps: 12.5 }, { codeLetter: 'J', design: 'B' }, 'doubtful'],
  ['10 hp, L', { hp: 10, amps: 12.5 }, { codeLetter: 'L', design: 'B' }, 'wrong'],
  ['15 hp, G', { hp: 15, amps: 18.5 }, { codeLetter: 'G', design: 'B' }, null],
  ['15 hp, H', { hp: 15, amps: 18.5 }, { codeLetter: 'H', design: 'B' }, 'doubtful'],
  ['1 hp, M', { hp: 1, amps: 1.4 }, { codeLetter: 'M', design: 'B' }, null],
  ['design A has no ceiling', { hp: 10, amps: 12.5 }, { codeLetter: 'L', design: 'A' }, null],
  ['no design letter, no ceiling', { hp: 10, amps: 12.5 }, { codeLetter: 'L', design: null }, null],
  ['a power the table does not reach', { hp: 700, amps: 790 }, { codeLetter: 'L', design: 'B' }, null],
] as const)('against the design: %s', (_, row, rest, grade) => {
  expect(gradeOf(row, rest)).toBe(grade);
});

test('the sum is shown', () => {
  expect(codeLetter(withRow({ hp: 10, amps: 12.5 }, { codeLetter: 'L' }))).toMatchObject({
    field: 'codeLetter',
    have: 'L',
    expected: 6.45,
    says: '√3 × 460 V × 81 A / 10 hp = 6.45 kVA/hp at most for design B; code letter L is 9 to 9.99 kVA/hp.',
  });
});

// 5 hp at 460 V and 6.6 A: 1.05 kVA/hp at full load; 2.5 times that is 2.63.
test.each([
  ['A, 3.14: three times', { amps: 6.6 }, { codeLetter: 'A' }, null],
  ['A, less than two and a half times', { amps: 8 }, { codeLetter: 'A' }, 'doubtful'],
  ['A, less than the full load itself', { amps: 20 }, { codeLetter: 'A' }, 'wrong'],
  ['a wound rotor', { amps: 20 }, { codeLetter: 'A', kind: 'wound-rotor' }, null],
] as const)('against the amps: %s', (_, row, rest, grade) => {
  expect(gradeOf(row, rest)).toBe(grade);
});

test.each([
  ['no code letter', {}, { codeLetter: null }],
  ['no phases', {}, { phases: null }],
  ['no power', { hp: null }, {}],
  ['no volts', { volts: null }, {}],
  ['no row at 60 Hz', { hertz: 50 }, {}],
])('is silent with %s', (_, row, rest) => {
  expect(gradeOf({ hp: 10, ...row }, { codeLetter: 'L', ...rest })).toBeNull();
});
