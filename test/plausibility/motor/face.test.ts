import { expect, test } from 'vitest';
import { face } from '@/lib/plausibility/motor/face';
import { withRow } from '../row';

const of = (frame: string | null, rest: Parameters<typeof withRow>[1] = {}) => face(withRow({}, { frame, ...rest }));

// NEMA MG 1 4.2.2: C and D name a face, no letter none; Y leaves the mounting open.
test.each([
  ['184TC', 'IM B34', null],
  ['184TC', 'F-1', null],
  ['184TC', 'face', null],
  ['184T', 'F-1', null],
  ['184T', 'IM B3', null],
  ['184TC', 'IM B3', 'wrong'],
  ['254TD', 'IM B3', 'wrong'],
  ['184T', 'IM B5', 'wrong'],
  ['184T', 'foot and face', 'wrong'],
  ['184TY', 'IM B5', null],
  ['184JM', 'IM B14', null],
])('%s with %s', (frame, mounting, grade) => {
  expect(of(frame, { mounting })?.grade ?? null).toBe(grade);
});

test('it says what the frame would be with the face', () => {
  expect(of('184T', { mounting: 'IM B5' })?.says).toBe(
    'Mounting IM B5 has a face, and frame 184T names none, as 184TC would.',
  );
});

// NEMA MG 1 4.4.4: the circle of 184TC is 7.25 in, 184.15 mm, its spigot 8.5 in, 215.9 mm. IEC 60072-1: FF215 has 215 mm.
test.each([
  ['the standard circle', '184TC', { pitchCircleMm: 184 }, null],
  ['two millimetres off', '184TC', { pitchCircleMm: 186.15 }, null],
  ['more', '184TC', { pitchCircleMm: 187 }, 'measured.pitchCircleMm'],
  ['the circle of the small face', '184TC', { pitchCircleMm: 149.2 }, 'measured.pitchCircleMm'],
  ['another spigot', '184TC', { spigotMm: 114.3 }, 'measured.spigotMm'],
  ['a circle on a motor without a face', '184T', { pitchCircleMm: 184 }, 'measured.pitchCircleMm'],
])('measured: %s', (_, frame, measured, field) => {
  expect(of(frame, { measured })?.field ?? null).toBe(field);
});

test('the difference is shown', () => {
  expect(of('184TC', { measured: { pitchCircleMm: 149.2 } })).toMatchObject({ grade: 'doubtful', expected: 184.15 });
});

test('an IEC face is measured against its flange', () => {
  const iec = { mounting: 'IM B5', design: null, codeLetter: null };
  expect(of('112M', { ...iec, measured: { pitchCircleMm: 215 } })).toBeNull();
  expect(of('112M', { ...iec, measured: { pitchCircleMm: 265 } })?.expected).toBe(215);
});

test('is silent without a frame, a code or a measured face', () => {
  expect(of(null, { mounting: 'IM B5' })).toBeNull();
  expect(of('184T', { mounting: null })).toBeNull();
});
