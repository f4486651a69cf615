import { expect, test } from 'vitest';
import { held } from '@/lib/plausibility/set/held';
import { set } from '../../matching/easy';
import { inSet } from '../in-set';

const of = (mounting: 'foot' | 'face' | 'foot-and-face', frame: string | null, code: string | null = null) =>
  inSet(
    held,
    { mounting },
    { frame, mounting: code, ...(frame?.endsWith('M') ? { design: null, codeLetter: null } : {}) },
  );

// NEMA MG 1 4.2.2: a plain number has feet and no face; IEC 60034-7: B3 feet, B5 a face alone, B35 both, B30 neither.
test.each([
  ['foot', '184T', null, null],
  ['face', '184T', null, 'wrong'],
  ['foot-and-face', '184T', null, 'wrong'],
  ['face', '184TC', null, null],
  ['foot', '184TC', null, null], // with feet or without: the frame leaves it open
  ['foot', '184TC', 'face', 'wrong'],
  ['foot', '112M', 'IM B3', null],
  ['face', '112M', 'IM B3', 'wrong'],
  ['foot', '112M', 'IM B5', 'wrong'],
  ['foot-and-face', '112M', 'IM B35', null],
  ['foot', '112M', 'IM B35', null],
  ['foot', '112M', 'IM B30', null],
  ['foot', '112M', null, null],
  ['face', null, null, null],
] as const)('%s with %s %s', (mounting, frame, code, grade) => {
  expect(of(mounting, frame, code)?.grade ?? null).toBe(grade);
});

test('it says what is lacking', () => {
  expect(of('foot', '112M', 'IM B5')).toMatchObject({
    field: 'mounting',
    expected: 'face',
    says: 'The set holds its motor by its feet; M-1 (112M, IM B5) has no feet.',
  });
});

test('is silent without a motor', () => {
  expect(held(set({ mounting: 'face' }), null)).toBeNull();
});
