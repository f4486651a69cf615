import { expect, test } from 'vitest';
import { serviceFactor } from '@/lib/plausibility/motor/service-factor';
import { withRow } from '../row';

const of = (factor: number | null, hp: number | null, rest: Parameters<typeof withRow>[1] = {}, row = {}) =>
  serviceFactor(withRow({ hp, ...row }, { serviceFactor: factor, ...rest }));

// NEMA MG 1-12.51, open motors (read in two texts): 1.35 to 1/3 hp, 1.25 to 1 hp, 1.15 above; a tenth more is sold.
test.each([
  ['1/3 hp, 1.35', 1.35, 1 / 3, null],
  ['1/3 hp, beyond', 1.5, 1 / 3, 'doubtful'],
  ['1 hp, 1.25', 1.25, 1, null],
  ['1 hp, 1.35', 1.35, 1, null],
  ['1 hp, 1.4', 1.4, 1, 'doubtful'],
  ['5 hp, 1.15', 1.15, 5, null],
  ['5 hp, 1.25', 1.25, 5, null],
  ['5 hp, 1.3', 1.3, 5, 'doubtful'],
  ['1.0', 1, 5, null],
])('%s', (_, factor, hp, grade) => {
  expect(of(factor, hp)?.grade ?? null).toBe(grade);
});

test('a service factor of a row is looked at too, and named', () => {
  expect(of(null, 5, {}, { serviceFactor: 1.6 })?.field).toBe('ratings.0.serviceFactor');
  expect(of(1.6, 5)?.field).toBe('serviceFactor');
});

test('it is for continuous duty', () => {
  expect(of(1.15, 5, { duty: 'S3' })?.says).toContain('a service factor is for continuous duty, S1');
  expect(of(1.15, 5, { duty: 'S1' })).toBeNull();
  expect(of(1.15, 5, { duty: null })).toBeNull();
});

test('it is no use where gas or dust is present in normal running', () => {
  const nec = (division: 1 | 2) => ({ scheme: 'NEC' as const, class: 2 as const, division, tempCode: 'T4' });
  const iec = (zone: 1 | 2 | 21 | 22) => ({ scheme: 'IEC', zone, group: null, tempC: 125 }) as const;
  expect(of(1.15, 5, { classification: nec(1) })?.grade).toBe('doubtful');
  expect(of(1.15, 5, { classification: nec(2) })).toBeNull();
  expect(of(1.15, 5, { classification: iec(21) })?.grade).toBe('doubtful');
  expect(of(1.15, 5, { classification: iec(22) })).toBeNull();
  expect(of(1, 5, { classification: nec(1) })).toBeNull();
});

test('is silent without a service factor, and without a power to measure it by', () => {
  expect(of(null, 5)).toBeNull();
  expect(of(1.9, null)).toBeNull();
});
