import { expect, test } from 'vitest';
import { mounting } from '@/lib/plausibility/motor/mounting';
import { withRow } from '../row';

const of = (frame: string | null, code: string | null) =>
  mounting(withRow({ hp: null, kw: 4 }, { frame, mounting: code, design: null, codeLetter: null }));

// IEC 60034-7: B3 feet, B5 free holes, B14 tapped holes; IEC 60072-1: FF free holes, FT tapped holes.
test.each([
  ['112M', 'IM B3', null],
  ['112M', 'IM B35', null],
  ['112M', 'IM 3001', null],
  ['112M FF215', 'IM B5', null],
  ['112M FT130', 'IM B14', null],
  ['112M FF215', 'IM B14', 'wrong'],
  ['112M FF215', 'IM B3', 'wrong'],
  ['112M B5', 'IM B3', 'wrong'],
  ['112M', 'IM B99', 'doubtful'],
  ['112M', 'on the wall', 'doubtful'],
  ['184TC', 'F-1', null],
  ['184TC', 'IM B3', null], // the letters of a NEMA frame are the rule of the face
  ['FF265', 'IM 3001', null], // no frame is told: the rule of frame names
])('%s with %s', (frame, code, grade) => {
  expect(of(frame, code)?.grade ?? null).toBe(grade);
});

test('it says both words', () => {
  expect(of('112M FF215', 'IM B14')?.says).toBe('Mounting IM B14 does not go with flange FF215: frame 112M FF215.');
});

test('is silent without a code, or with a code alone', () => {
  expect(of('112M FF215', null)).toBeNull();
  expect(of(null, 'IM B5')).toBeNull();
});
