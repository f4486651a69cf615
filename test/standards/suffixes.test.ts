import { describe, expect, test } from 'vitest';
import { DIMENSION_NAMES, type DimensionName } from '@/lib/standards/dimension';
import { type FrameOptions, readFrame } from '@/lib/standards/dimensions-of';
import { mmOfInches } from '@/lib/units/length';

const of = (text: string, options: FrameOptions = {}) => {
  const read = readFrame(text, options);
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join('; '));
  return read.value;
};
const inches = (text: string, name: DimensionName): number | null => {
  const { value } = of(text).dimensions[name];
  return value === null ? null : Math.round((value / mmOfInches(1)) * 1000) / 1000;
};

const FEET = ['shaftHeightMm', 'holesAcrossMm', 'holesAlongMm', 'footHoleMm', 'holeToShoulderMm'] as const;
const SHAFT = ['shaftDiameterMm', 'shaftLengthMm', 'keyWidthMm'] as const;

/** NEMA MG 1-2016 4.2.2: Y special mounting, Z special shaft (read in two texts); R taper from memory; J threaded (two texts). */
describe('what a suffix voids is null with origin unknown and says why; the rest stands', () => {
  test.each<[string, readonly DimensionName[]]>([
    ['184T', []],
    ['184TY', FEET],
    ['184TZ', SHAFT],
    ['184TYZ', [...FEET, ...SHAFT]],
    ['143TCZ', SHAFT],
    ['56HCY', FEET],
    ['324TSCZ', SHAFT],
    ['324TR', SHAFT],
    ['56J', SHAFT],
    ['284TP', ['holesAcrossMm', 'holesAlongMm', 'footHoleMm', 'holeToShoulderMm', ...SHAFT]],
    ['405TCV', []],
    ['184TFC', []],
  ])('%s', (text, voided) => {
    const { dimensions } = of(text);
    for (const name of DIMENSION_NAMES) {
      const { value, origin, status } = dimensions[name];
      if (voided.includes(name)) expect([name, value, origin, status]).toEqual([name, null, 'unknown', null]);
      else {
        expect([name, origin]).toEqual([name, 'standard']);
        expect(value).toBeGreaterThan(0);
        expect(status).not.toBeNull();
      }
    }
  });

  test('the reason is kept where a figure would be', () => {
    expect(of('184TY').dimensions.holesAlongMm.cite).toContain("maker's drawing");
    expect(of('143TCZ').dimensions.shaftDiameterMm.cite).toContain("maker's drawing");
    expect(of('56J').dimensions.keyWidthMm.cite).toContain('jet-pump');
  });

  test('a special mounting has no standard face; a special shaft keeps it', () => {
    expect(of('184TCY').face).toBeNull();
    expect(of('184TCY').holding.face).toBe(true);
    expect(of('184TCZ').face?.name).toBe('184TC');
  });
});

/** MG 1-2016 4.4.1 (T), superseded editions for the others: diameter and length of the 1964, 1952, pre-1952 and short shafts. */
describe('series and short shaft: one number, several shafts', () => {
  test.each([
    ['324T', 2.125, 5.25, 0.5],
    ['324TS', 1.875, 3.75, 0.5],
    ['324U', 1.875, 5.62, 0.5], // from memory
    ['324S', 1.625, 3.25, 0.375], // from memory
    ['324', 1.625, 4.88, 0.375], // from memory
    ['364S', 1.625, 3.25, 0.375], // from memory
    ['364US', 1.875, 3.75, 0.5], // from memory
    ['184T', 1.125, 2.75, 0.25],
    ['184', 0.875, 2.25, 0.188],
    ['215', 1.125, 3, 0.25],
    ['254', 1.125, 3.38, 0.25], // from memory
    ['254U', 1.375, 3.75, 0.312], // from memory
    ['254T', 1.625, 4, 0.375],
  ])('%s: %s in by %s in, key %s in', (text, diameter, length, key) => {
    expect(inches(text, 'shaftDiameterMm')).toBeCloseTo(diameter, 2);
    expect(inches(text, 'shaftLengthMm')).toBeCloseTo(length, 2);
    expect(inches(text, 'keyWidthMm')).toBeCloseTo(key, 2);
  });

  test('short shafts are told as such, and one that no table lists has no figures', () => {
    expect([of('324TS').shaft, of('324T').shaft, of('364US').shaft]).toEqual(['short', 'plain', 'short']);
    expect(of('254TS').dimensions.shaftDiameterMm).toMatchObject({ value: null, origin: 'unknown' });
    expect(of('254TS').dimensions.holesAlongMm.value).toBeCloseTo(mmOfInches(8.25), 1);
  });

  test('special shafts are told by kind', () => {
    const kinds = ['145JM', '215JP', '56J', '284TP', '254VP', '324TR', '184TZ', '184TC'].map((text) => of(text).shaft);
    expect(kinds).toEqual(['JM', 'JP', 'J', 'hollow', 'solid-vertical', 'taper', 'special', 'plain']);
  });

  // The small shafts have a flat and no key (MG 1-2016 4.4.1).
  test('a flat is no key of width nought', () => {
    expect(of('48').dimensions.keyWidthMm).toMatchObject({ value: null, origin: 'unknown' });
    expect(of('48').dimensions.keyWidthMm.cite).toContain('flat');
  });
});

/** MG 1-2016 4.4.4 against 4.4.1: BA of a footed C-face motor, read in two texts up to 256TC. */
describe('a C-face motor with feet has its own distance from shoulder to foot holes', () => {
  test.each([
    ['143T', 2.25],
    ['143TC', 2.75],
    ['145TC', 2.75],
    ['182T', 2.75],
    ['182TC', 3.5],
    ['184TC', 3.5],
    ['213T', 3.5],
    ['215TC', 4.25],
    ['254T', 4.25],
    ['256TC', 4.75],
    ['284T', 4.75],
    ['284TC', 4.75],
    ['182TCH', 3.5],
    ['56', 2.75],
    ['56C', 2.75],
  ])('%s: %s in', (text, ba) => {
    expect(inches(text.replace(/^56$/, 'NEMA 56'), 'holeToShoulderMm')).toBeCloseTo(ba, 2);
  });

  test('where no table gives it, it is unknown and not that of the foot motor', () => {
    for (const text of ['182C', '182TD', '145JM', '254UC'])
      expect(of(text).dimensions.holeToShoulderMm).toMatchObject({ value: null, origin: 'unknown' });
  });
});

/** MG 1-2016 4.4.1: 2F of each number; 56H takes both. */
describe('two hole patterns are both kept', () => {
  test.each([
    ['182/4T', 4.5, 5.5],
    ['182T/184T', 4.5, 5.5],
    ['143/5T', 4, 5],
    ['213/5T', 5.5, 7],
    ['254/6T', 8.25, 10],
    ['56H', 5, 3],
    ['L56HC', 5, 3],
  ])('%s: %s in and %s in', (text, first, second) => {
    const { value, alternatives } = of(text).dimensions.holesAlongMm;
    expect(value).toBeCloseTo(mmOfInches(first), 1);
    expect(alternatives).toHaveLength(1);
    expect(alternatives[0]).toBeCloseTo(mmOfInches(second), 1);
  });

  test('one number has one pattern', () => {
    expect(of('184T').dimensions.holesAlongMm.alternatives).toEqual([]);
  });

  // IEC 60072-1: B of 132S is 140, of 132M 178; of 90S 100, of 90L 125.
  test.each([
    ['132S/M', 140, 178],
    ['90S/L', 100, 125],
  ])('%s: %s mm and %s mm', (text, first, second) => {
    expect(of(text).dimensions.holesAlongMm).toMatchObject({ value: first, alternatives: [second] });
  });
});

/** MG 1-2016 4.2.2 (CH one suffix), 4.4.4; 182C from the superseded series. Inch: circle, rabbet, thread, shaft diameter. */
describe('182C, 182TC and 182TCH are three faces', () => {
  test.each([
    ['182C', 'C', 5.875, 4.5, '3/8-16', 0.875],
    ['182TC', 'C', 7.25, 8.5, '1/2-13', 1.125],
    ['182TCH', 'CH', 5.875, 4.5, '3/8-16', 1.125],
  ])('%s', (text, kind, circle, rabbet, thread, shaft) => {
    const { face } = of(text);
    expect(face).toMatchObject({ kind, hole: { thread } });
    expect(face?.pitchCircleMm).toBeCloseTo(mmOfInches(circle), 2);
    expect(face?.spigotMm).toBeCloseTo(mmOfInches(rabbet), 2);
    expect(inches(text, 'shaftDiameterMm')).toBeCloseTo(shaft, 3);
  });

  test('182CH is none of them: its face is there and its figures unknown', () => {
    expect(of('182CH').face).toMatchObject({ kind: 'CH', pitchCircleMm: null, spigotMm: null, hole: null });
  });
});

describe('feet and face as the letters tell them', () => {
  test.each<[string, string | null, boolean | null, boolean | null]>([
    ['184T', null, true, false],
    ['184TC', null, null, true], // sold with feet and without: the number does not tell
    ['184TC', 'F-1', true, true],
    ['184TC', 'face', false, true],
    ['184TC', 'IM B35', true, true],
    ['56J', null, null, true],
    ['284TP', null, false, true],
    ['184TFC', null, true, false], // a face on the far end is not what the pump bolts to
    ['184TY', null, null, null],
  ])('%s with %s: feet %s, face %s', (text, mounting, feet, face) => {
    expect(of(text, { mounting }).holding).toMatchObject({ feet, face });
  });

  test('without feet there are no holes to offer, and the height stays for the outline', () => {
    const { dimensions } = of('184TC', { mounting: 'face' });
    expect(dimensions.shaftHeightMm.value).toBeCloseTo(mmOfInches(4.5), 2);
    for (const name of ['holesAcrossMm', 'holesAlongMm', 'footHoleMm', 'holeToShoulderMm'] as const)
      expect(dimensions[name]).toMatchObject({ value: null, origin: 'unknown' });
  });

  test('vertical: positions as far as the letters tell', () => {
    expect(of('405TCV').holding).toMatchObject({ shaft: null, positions: [] });
    expect(of('284TP').holding).toMatchObject({ shaft: 'down', positions: ['down'] });
  });
});
