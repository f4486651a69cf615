import { describe, expect, test } from 'vitest';
import { frameAnswer } from '@/lib/standards/frame-answer';

const of = (...args: Parameters<typeof frameAnswer>) => {
  const read = frameAnswer(...args);
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join('; '));
  return read.value;
};

const NAMES = [
  'shaftHeightMm',
  'holesAcrossMm',
  'holesAlongMm',
  'footHoleMm',
  'holeToShoulderMm',
  'shaftDiameterMm',
  'shaftLengthMm',
  'keyWidthMm',
];

describe('the answer of a frame', () => {
  test('184TC: eight dimensions, each with value, limits, origin, status and clause, and the face', () => {
    const { frame, system, dimensions, face } = of('184TC');
    expect([frame, system]).toEqual(['184TC', 'NEMA']);
    expect(Object.keys(dimensions)).toEqual(NAMES);
    for (const dimension of Object.values(dimensions))
      expect(Object.keys(dimension).sort()).toEqual(
        ['alternatives', 'cite', 'minus', 'origin', 'plus', 'status', 'value'].sort(),
      );
    expect(dimensions.shaftHeightMm).toMatchObject({ value: 114.3, plus: 0, origin: 'standard', alternatives: [] });
    // NEMA MG 1-2016 4.4.4: AJ 7.250, AK 8.500, BD 9.00, four 1/2-13 holes.
    expect(face).toMatchObject({
      name: '184TC',
      pitchCircleMm: 184.15,
      spigotMm: 215.9,
      outsideMm: 228.6,
      holes: 4,
      hole: { thread: '1/2-13' },
    });
    expect(face?.hole).toEqual({ thread: '1/2-13' });
  });

  test('a plain foot motor has no face', () => {
    expect(of('184T').face).toBeNull();
    expect(of('112M', { mounting: 'IM B3' }).face).toBeNull();
  });

  // IEC 60072-1: FF215 on 112M, holes 14.5 (from memory); FT130 with M8.
  test('a hole is either through or tapped', () => {
    expect(of('112M', { mounting: 'IM B35' }).face?.hole).toEqual({ throughMm: 14.5 });
    expect(of('112M', { mounting: 'IM B14' }).face?.hole).toEqual({ thread: 'M8' });
  });

  test('a flange alone has empty dimensions', () => {
    expect(of('FF165')).toMatchObject({ frame: 'FF165', system: 'IEC', dimensions: {}, face: { name: 'FF165' } });
    expect(of('FF165').dimensions).toEqual({});
    expect(of('FT130').dimensions).toEqual({});
    expect(of('FT130').face?.hole).toEqual({ thread: 'M8' });
  });

  test('what a suffix voids stays in the answer as null with origin unknown', () => {
    const { dimensions } = of('184TZ');
    expect(Object.keys(dimensions)).toEqual(NAMES);
    expect(dimensions.shaftDiameterMm).toMatchObject({
      value: null,
      plus: null,
      minus: null,
      origin: 'unknown',
      status: null,
    });
  });

  test('poles decide the shaft where it depends on them', () => {
    expect(of('225M', { poles: 2 }).dimensions.shaftDiameterMm?.value).toBe(55);
    expect(of('225M', { poles: 4 }).dimensions.shaftDiameterMm?.value).toBe(60);
    expect(of('225M').dimensions.shaftDiameterMm).toMatchObject({ value: null, origin: 'unknown' });
  });

  test('every problem has its path', () => {
    const read = frameAnswer('56', { mounting: 'sideways', poles: 5 });
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problems.map(({ path }) => path)).toEqual(['frame', 'mounting', 'poles']);
  });
});
