import { describe, expect, test } from 'vitest';
import { type FrameOptions, readFrame } from '@/lib/standards/dimensions-of';

const of = (text: string, options: FrameOptions = {}) => {
  const read = readFrame(text, options);
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join('; '));
  return read.value;
};

/** EN 50347 Tables 1 to 3 (clause numbers from memory): shaft of 2 poles, and of 4 and more. 355 is beyond it. */
describe('from 225 up two poles have another shaft than four and more', () => {
  test.each([
    ['225M', [55, 110, 16], [60, 140, 18]],
    ['250M', [60, 140, 18], [65, 140, 18]],
    ['280S', [65, 140, 18], [75, 140, 20]],
    ['280M', [65, 140, 18], [75, 140, 20]],
    ['315S', [65, 140, 18], [80, 170, 22]],
    ['315L', [65, 140, 18], [80, 170, 22]],
  ])('%s', (text, two, more) => {
    const shaft = (poles: number) => {
      const { shaftDiameterMm, shaftLengthMm, keyWidthMm } = of(text, { poles }).dimensions;
      return [shaftDiameterMm.value, shaftLengthMm.value, keyWidthMm.value];
    };
    expect(shaft(2)).toEqual(two);
    expect(shaft(4)).toEqual(more);
    expect(shaft(8)).toEqual(more);
  });

  test('225S has no 2-pole output, and a 2-pole motor on it still has the smaller shaft', () => {
    expect(of('225S', { poles: 2 }).dimensions.shaftDiameterMm.value).toBe(55);
    expect(of('225S', { poles: 4 }).dimensions.shaftDiameterMm.value).toBe(60);
  });

  test('without the poles only what both have is known; the rest asks for them', () => {
    const { dimensions } = of('280M');
    expect(dimensions.shaftDiameterMm).toMatchObject({ value: null, origin: 'unknown' });
    expect(dimensions.shaftDiameterMm.cite).toContain('65 mm with 2 poles, 75 mm with 4 and more poles');
    expect(dimensions.shaftLengthMm).toMatchObject({ value: 140, origin: 'standard' });
    expect(dimensions.holesAlongMm.value).toBe(419);
  });

  test('the poles, or the shaft, written beside the frame are read', () => {
    expect(of('280M-2').dimensions.shaftDiameterMm.value).toBe(65);
    expect(of('280M 4-pole').dimensions.shaftDiameterMm.value).toBe(75);
    expect(of('250M 60').dimensions.shaftDiameterMm.value).toBe(60);
  });

  test('below 225 the poles change nothing', () => {
    expect(of('132M', { poles: 2 }).dimensions).toEqual(of('132M', { poles: 8 }).dimensions);
  });
});

describe('S, M and L are lengths of the foot, never a short shaft', () => {
  test('only the holes along differ', () => {
    const { holesAlongMm: short, ...s } = of('132S').dimensions;
    const { holesAlongMm: long, ...m } = of('132M').dimensions;
    expect([short.value, long.value]).toEqual([140, 178]); // IEC 60072-1 B
    expect(s).toEqual(m);
    expect(of('132S').shaft).toBe('plain');
  });

  test('a height with two usual lengths leaves the holes along unknown and names both', () => {
    const { holesAlongMm, holesAcrossMm } = of('90').dimensions;
    expect(holesAlongMm).toMatchObject({ value: null, origin: 'unknown' });
    expect(holesAlongMm.cite).toContain('90S 100, 90L 125');
    expect(holesAcrossMm.value).toBe(140);
  });

  test('a height with one usual length has it', () => {
    expect(of('112').frame).toBe('112M');
    expect(of('100').dimensions.holesAlongMm.value).toBe(140);
  });
});

/** EN 50347 Tables 4 to 6 (clause numbers from memory). */
describe('the flange comes from the mounting code, or is written beside the frame', () => {
  test.each([
    ['112M', 'IM B35', 'FF215', false],
    ['112M', 'IM B5', 'FF215', false],
    ['112M', 'IM B34', 'FT130', false],
    ['112M', 'IM 3601', 'FT130', false],
    ['112M FT165', 'IM B14', 'FT165', true], // the larger one: maker practice
    ['112M FT130', 'IM B14', 'FT130', false],
    ['90L FF165', null, 'FF165', false],
    ['90L FF130', null, 'FF130', true],
  ])('%s with %s: %s, optional %s', (text, mounting, name, optional) => {
    expect(of(text, { mounting }).face).toMatchObject({ name, optional });
  });

  test('none without either', () => {
    expect(of('112M').face).toBeNull();
    expect(of('112M').holding).toMatchObject({ feet: null, face: null });
    expect(of('112M', { mounting: 'IM B3' }).holding).toMatchObject({ feet: true, face: false });
  });

  test('a tapped flange that the standard does not fix is there with unknown figures', () => {
    const { face } = of('180M', { mounting: 'IM B14' });
    expect(face).toMatchObject({ kind: 'FT', pitchCircleMm: null, hole: null, optional: true });
    expect(face?.cite).toContain('no FT flange for frame 180M');
  });
});

test('raised feet and conical ends keep nothing of the frame that they change', () => {
  expect(of('100L', { mounting: 'IM B20' }).dimensions.shaftHeightMm).toMatchObject({ value: null, origin: 'unknown' });
  expect(of('100L', { mounting: 'IM 1003' }).dimensions.shaftDiameterMm).toMatchObject({
    value: null,
    origin: 'unknown',
  });
  expect(of('100L', { mounting: 'IM 1003' }).shaft).toBe('taper');
});

// ISO 286-2: k6 over 30 to 50 is +18 +2 µm, j6 over 18 to 30 +9 −4 µm. IEC 60072-1: H falls by 0.5 mm up to 250 (from memory).
test('limits of shaft and height', () => {
  expect(of('132S').dimensions.shaftDiameterMm).toMatchObject({ value: 38, plus: 0.018, minus: -0.002 });
  expect(of('132S').shaftFit).toBe('k6');
  expect(of('112M').dimensions.shaftDiameterMm).toMatchObject({ value: 28, plus: 0.009, minus: 0.004 });
  expect(of('112M').dimensions.shaftHeightMm).toMatchObject({ value: 112, plus: 0, minus: 0.5 });
  expect(of('315M').dimensions.shaftHeightMm).toMatchObject({ plus: 0, minus: 1 });
});
