import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '@/lib/standards/dimensions-of';
import { keyForShaft } from '@/lib/standards/key-for-shaft';

const TWO = 'ISO/R 773, DIN 6885-1 Table 1 (number from memory), read in two tables';
const ONE = 'ISO/R 773, DIN 6885-1 Table 1 (number from memory), read in one table';

// The width of the key by the diameter of the shaft, met on the frame that has that shaft.
describe('metric keys: shaft diameter over, up to, key width in mm', () => {
  test.each<[number, number, number, string, number | null, string]>([
    [8, 10, 3, 'IEC 56', null, TWO],
    [10, 12, 4, '63', null, TWO],
    [12, 17, 5, '71', null, TWO],
    [17, 22, 6, '80', null, TWO],
    [22, 30, 8, '90L', null, TWO],
    [22, 30, 8, '112M', null, TWO],
    [30, 38, 10, '132M', null, TWO],
    [38, 44, 12, '160M', null, TWO],
    [44, 50, 14, '180M', null, TWO],
    [50, 58, 16, '200L', null, TWO],
    [50, 58, 16, '225M', 2, TWO],
    [58, 65, 18, '225M', 4, ONE],
    [58, 65, 18, '280M', 2, ONE],
    [65, 75, 20, '280M', 4, ONE],
    [75, 85, 22, '315M', 4, ONE],
    [95, 110, 28, '355L', 4, ONE],
  ])('over %s to %s: %s, as on %s', (over, to, width, frame, poles) => {
    const { shaftDiameterMm, keyWidthMm } = dimensionsOf(frame, { poles }).dimensions;
    expect(shaftDiameterMm.value).toBeGreaterThan(over);
    expect(shaftDiameterMm.value).toBeLessThanOrEqual(to);
    expect(keyWidthMm.value).toBe(width);
  });
});

// NEMA MG 1-2016 4.4.1, S in inches by shaft diameter U: read in two charts for T frames, 1952 series in one or from memory.
describe('inch keys: shaft diameter, key width in inches', () => {
  test.each<[number, number, string]>([
    [0.625, 0.188, 'NEMA 56'],
    [0.875, 0.188, '145T'],
    [1.125, 0.25, '182T'],
    [1.375, 0.312, '215T'],
    [1.625, 0.375, '254T'],
    [1.625, 0.375, '284TS'],
    [1.875, 0.5, '284T'],
    [1.875, 0.5, '326TS'],
    [2.125, 0.5, '324T'],
    [2.375, 0.625, '365T'],
    [2.875, 0.75, '404T'],
    [3.375, 0.875, '449T'],
    [0.875, 0.188, '184'],
    [1.375, 0.312, '254U'], // from memory
    [1.125, 0.25, '254'], // from memory
  ])('%s: %s, as on %s', (diameter, width, frame) => {
    const { shaftDiameterMm, keyWidthMm } = dimensionsOf(frame).dimensions;
    expect(shaftDiameterMm.value).toBeCloseTo(diameter * 25.4, 2);
    expect(keyWidthMm.value).toBeCloseTo(width * 25.4, 2);
  });

  // 28 mm and 1-1/8 in are near, their keys are not: DIN 6885-1 8 mm, MG 1 4.4.1 1/4 in.
  test('an IEC 112M and a NEMA 184T have different keys', () => {
    expect(dimensionsOf('112M').dimensions.keyWidthMm.value).toBe(8);
    expect(dimensionsOf('184T').dimensions.keyWidthMm.value).toBe(6.35);
  });
});

// DIN 6885-1 Table 1 (number from memory): read in two tables up to 58 mm, in one up to 130 mm, from memory above.
test.each([
  [9, 3],
  [10, 3],
  [11, 4],
  [14, 5],
  [19, 6],
  [22, 6],
  [24, 8],
  [30, 8],
  [32, 10],
  [42, 12],
  [48, 14],
  [58, 16],
  [65, 18],
  [70, 20],
  [85, 22],
  [90, 25],
  [110, 28],
  [130, 32],
  [140, 36],
])('a metric shaft of %s mm has a key of %s mm', (shaftMm, keyMm) => {
  expect(keyForShaft(shaftMm, 'IEC')).toBe(keyMm);
});

test('no key where no table lists the shaft', () => {
  expect(keyForShaft(5, 'IEC')).toBeNull();
  expect(keyForShaft(200, 'IEC')).toBeNull();
  expect(keyForShaft(12.7, 'NEMA')).toBeNull(); // frame 48 has a flat (MG 1-2016 4.4.1)
  expect(keyForShaft(30, 'NEMA')).toBeNull();
  expect(keyForShaft(28.6, 'NEMA')).toBe(6.35); // 1-1/8 in: 1/4 in
});
