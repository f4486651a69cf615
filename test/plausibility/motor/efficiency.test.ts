import { expect, test } from 'vitest';
import { efficiency } from '@/lib/plausibility/motor/efficiency';
import { withRow } from '../row';

const gradeOf = (row: Parameters<typeof withRow>[0], rest: Parameters<typeof withRow>[1] = {}) =>
  efficiency(withRow(row, rest))?.grade ?? null;

// NEMA MG 1 Table 12-12 (read in two texts) and IEC 60034-30-1: the classes themselves.
test.each([
  ['premium, 5 hp, 4 poles', { hp: 5, efficiencyPct: 89.5 }, { poles: 4 }],
  ['premium, 200 hp, 4 poles', { hp: 200, efficiencyPct: 96.2 }, { poles: 4 }],
  ['IE4, 7.5 kW, 4 poles, 50 Hz', { hp: null, kw: 7.5, hertz: 50, efficiencyPct: 92.6 }, { poles: 4 }],
  ['a class above premium at 60 Hz, 5 hp', { hp: 5, efficiencyPct: 91.7 }, { poles: 4 }],
])('%s raises nothing', (_, row, rest) => {
  expect(gradeOf(row, rest)).toBeNull();
});

test('far above any class is wrong and shows the losses', () => {
  // Premium loses 10.5 % at 5 hp and 4 poles; the class above 8.4 %.
  expect(efficiency(withRow({ efficiencyPct: 98.5 }))).toMatchObject({
    grade: 'wrong',
    field: 'ratings.0.efficiencyPct',
    have: 98.5,
    unit: '%',
    says: '100 − 98.5 = 1.5 % of losses; the highest class loses 8.4 % at 3.73 kW and 4 poles: more than one nominal step better than any class.',
  });
});

// The bound at 5 hp and 4 poles: 0.9 × 8.4 = 7.56 % of losses; half of 8.4 is 4.2 %.
test.each([
  ['at the bound', { efficiencyPct: 92.4 }, {}, null],
  ['just above it', { efficiencyPct: 92.5 }, {}, 'doubtful'],
  ['with half the losses', { efficiencyPct: 95.8 }, {}, 'doubtful'],
  ['with less than half', { efficiencyPct: 95.9 }, {}, 'wrong'],
  ['a permanent magnet is a class better', { efficiencyPct: 93.5 }, { kind: 'permanent-magnet' }, null],
  ['100 %', { efficiencyPct: 100 }, {}, 'wrong'],
  ['a share of one', { efficiencyPct: 0.895 }, {}, 'wrong'],
  ['unknown poles count as the best', { efficiencyPct: 92.4 }, { poles: null }, null],
  ['12 poles count as the best', { efficiencyPct: 92.4 }, { poles: 12 }, null],
] as const)('%s', (_, row, rest, grade) => {
  expect(gradeOf(row, rest)).toBe(grade);
});

test('a share of one is told in per cent', () => {
  expect(efficiency(withRow({ efficiencyPct: 0.895 }))).toMatchObject({ expected: 89.5 });
});

test('is silent without efficiency, and without power', () => {
  expect(gradeOf({ efficiencyPct: null })).toBeNull();
  expect(gradeOf({ hp: null, efficiencyPct: 99.5 })).toBeNull();
});
