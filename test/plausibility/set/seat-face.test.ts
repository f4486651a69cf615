import { expect, test } from 'vitest';
import { seatFace } from '@/lib/plausibility/set/seat-face';
import { set } from '../../matching/easy';
import { inSet } from '../in-set';

const of = (face: string | null, frame: string | null, mounting: string | null = null) =>
  inSet(
    seatFace,
    { seat: { face } },
    { frame, mounting, ...(mounting?.startsWith('IM') ? { design: null, codeLetter: null } : {}) },
  );

// NEMA MG 1 4.4.4: 184TC on 7.25 in, 143TC on 5.875 in. EN 50347: 112M B5 has FF215, B14 FT130.
test.each([
  ['182TC', '184TC', null, null],
  ['143TC', '184TC', null, 'wrong'],
  ['FF215', '112M', 'IM B5', null],
  ['FF265', '112M', 'IM B5', 'wrong'],
  ['FF265', '112M FF265', 'IM B5', null],
  ['FF215', '112M', 'IM B14', 'wrong'],
  ['FF215', '112M', 'IM B3', 'wrong'],
  ['182TC', '184T', null, 'wrong'],
  ['some flange', '184TC', null, null],
  ['182TC', null, null, null],
  [null, '184T', null, null],
])('a seat of %s with %s %s', (face, frame, mounting, grade) => {
  expect(of(face, frame, mounting)?.grade ?? null).toBe(grade);
});

test('both circles are shown', () => {
  expect(of('FF265', '112M', 'IM B5')).toMatchObject({
    field: 'seat.face',
    expected: 'FF215',
    says: 'FF265 has its bolts on 265 mm, FF215 of M-1 on 215 mm: 50 mm apart.',
  });
});

test('is silent without a motor', () => {
  expect(seatFace(set({ seat: { face: 'FF215' } }), null)).toBeNull();
});
