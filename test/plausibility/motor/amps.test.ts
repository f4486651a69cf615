import { expect, test } from 'vitest';
import { amps } from '@/lib/plausibility/motor/amps';
import { bare, withRow } from '../row';

const gradeOf = (row: Parameters<typeof withRow>[0], rest: Parameters<typeof withRow>[1] = {}) =>
  amps(withRow(row, rest))?.grade ?? null;

// Currents printed on public data sheets.
test.each([
  { hp: null, kw: 15, volts: 400, efficiencyPct: 91.9, pf: 0.87, amps: 27.1 },
  { hp: null, kw: 7.5, volts: 400, efficiencyPct: 90.1, pf: 0.87, amps: 13.8 },
  { hp: 3, volts: 230, efficiencyPct: 89.5, pf: 0.87, amps: 7.2 },
  { hp: 3, volts: 460, efficiencyPct: 89.5, pf: 0.87, amps: 3.6 },
  { hp: 1.5, volts: 230, efficiencyPct: 86.5, pf: 0.73, amps: 4.45 },
  { hp: 1.5, volts: 460, efficiencyPct: 86.5, pf: 0.73, amps: 2.225 },
])('a row of a data sheet raises nothing: %j', (row) => {
  expect(gradeOf(row)).toBeNull();
  expect(gradeOf({ ...row, pf: null })).toBeNull();
  expect(gradeOf({ ...row, pf: null, efficiencyPct: null })).toBeNull();
});

test('amps of the other voltage show the sum', () => {
  // √3 · 460 · 13.2 · 0.82 · 0.895 = 7.72 kW: those of 230 V.
  expect(amps(withRow({ amps: 13.2 }))).toMatchObject({
    grade: 'wrong',
    field: 'ratings.0.amps',
    have: 13.2,
    expected: 6.38,
    unit: 'A',
    says: '√3 × 460 V × 13.2 A × 0.82 × 89.5 % = 7.72 kW; the row says 5 hp = 3.73 kW, which takes 6.4 A.',
  });
});

test('more power out than in is wrong, whatever else is not known', () => {
  // √3 · 460 · 4 = 3.19 kVA for 3.73 kW.
  const doubt = amps(withRow({ amps: 4, pf: null, efficiencyPct: null }));
  expect(doubt?.grade).toBe('wrong');
  expect(doubt?.says).toBe(
    '√3 × 460 V × 4 A = 3.19 kVA; the row says 5 hp = 3.73 kW: more would come out than goes in.',
  );
});

// Exact: 6.377 A. The tolerance is 10 % and half a tenth of an ampere.
test.each([
  ['10 % above', { amps: 7.0 }, null],
  ['just above that', { amps: 7.1 }, 'doubtful'],
  ['35 % above', { amps: 8.6 }, 'doubtful'],
  ['more than 35 % above', { amps: 8.7 }, 'wrong'],
  ['10 % below', { amps: 5.8 }, null],
  ['just below that', { amps: 5.7 }, 'doubtful'],
  ['little for the size, nothing else known', { amps: 12, pf: null, efficiencyPct: null }, 'doubtful'],
  ['within what the size has, nothing else known', { amps: 8, pf: null, efficiencyPct: null }, null],
  ['beyond what a power factor can be', { amps: 20, pf: null }, 'wrong'],
] as const)('%s', (_, row, grade) => {
  expect(gradeOf(row)).toBe(grade);
});

test('a row for a range of volts may have the amps of either end', () => {
  const range = { volts: null, voltsMin: 208, voltsMax: 230, hp: 5, pf: 0.82, efficiencyPct: 89.5 };
  expect(gradeOf({ ...range, amps: 14.1 })).toBeNull(); // at 208 V
  expect(gradeOf({ ...range, amps: 12.8 })).toBeNull(); // at 230 V
  expect(gradeOf({ ...range, amps: 6.6 })).toBe('wrong');
});

test('single-phase has no √3', () => {
  const row = { volts: 115, hertz: 60, hp: 1, amps: 12.4, pf: 0.78, efficiencyPct: 67 };
  expect(amps(bare({ phases: 1, ratings: [row] }))).toBeNull();
  expect(amps(bare({ phases: 3, ratings: [row] }))?.grade).toBe('wrong');
});

test.each([
  ['no amps', { amps: null }, {}],
  ['no volts', { volts: null }, {}],
  ['no power', { hp: null }, {}],
  ['no phases', {}, { phases: null }],
])('is silent with %s', (_, row, rest) => {
  expect(gradeOf({ amps: 60, ...row }, rest)).toBeNull();
});
