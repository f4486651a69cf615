import { expect, test } from 'vitest';
import { rotation } from '@/lib/matching/criteria/surroundings/rotation';
import { motor, set } from '../easy';
import { asked } from './asked';

type Way = 'cw' | 'ccw' | 'either' | null;
const place = (stated: Way, had: Way = 'either') => ({
  ...set({ rotation: stated }),
  failed: motor({ rotation: had }),
});
const candidate = (way: Way) => motor({ rotation: way });

// Common practice, no source; the sense is as seen from the drive end (IEC 60034-8, from memory).
test.each([
  ['cw', 'cw', 'ok', null],
  ['cw', 'either', 'ok', null],
  ['ccw', 'either', 'ok', null],
  ['cw', 'ccw', 'block', null],
  ['ccw', 'cw', 'block', null],
  ['cw', null, 'check', 'reading'],
] as const)('a pump that turns %s, a motor built for %s: %s', (stated, way, grade, by) => {
  expect(asked(rotation, place(stated), candidate(way))).toMatchObject({ grade, by, need: stated, have: way });
});

test.each([
  ['cw', 'ccw', 'check'],
  ['cw', 'cw', 'ok'],
  ['ccw', 'either', 'ok'],
  ['ccw', null, 'check'],
] as const)('a failed motor built for %s only is evidence; this one for %s: %s', (had, way, grade) => {
  expect(asked(rotation, place(null, had), candidate(way))?.grade).toBe(grade);
});

test('is not asked where the pump may turn either way, nor where nothing tells of it', () => {
  expect(asked(rotation, place('either', 'cw'), candidate('ccw'))).toBeNull();
  expect(asked(rotation, place(null, 'either'), candidate('ccw'))).toBeNull();
  expect(asked(rotation, place(null, null), candidate(null))).toBeNull();
  expect(asked(rotation, { ...place(null), failed: null }, candidate('cw'))).toBeNull();
});
