import { describe, expect, test } from 'vitest';
import { dimensionsOf } from '@/lib/standards/dimensions-of';

const TWICE = 'IEC 60072-1 flange tables, read in two or more texts';
const ONCE = 'IEC 60072-1 flange tables, read in one maker’s sheet';
const MEMORY_HOLE = 'circle, spigot and outside read; the hole from memory';

// M bolt circle, N spigot, P outside, S hole or thread, in mm.
describe('IEC flanges', () => {
  test.each<[string, number, number, number, number | string, string]>([
    ['FF100', 100, 80, 120, 7, TWICE],
    ['FF115', 115, 95, 140, 10, TWICE],
    ['FF130', 130, 110, 160, 10, TWICE],
    ['FF165', 165, 130, 200, 12, TWICE],
    ['FF215', 215, 180, 250, 14.5, MEMORY_HOLE],
    ['FF265', 265, 230, 300, 14.5, MEMORY_HOLE],
    ['FF300', 300, 250, 350, 18.5, MEMORY_HOLE],
    ['FF350', 350, 300, 400, 18.5, MEMORY_HOLE],
    ['FF400', 400, 350, 450, 18.5, MEMORY_HOLE],
    ['FF500', 500, 450, 550, 18.5, MEMORY_HOLE],
    ['FF600', 600, 550, 660, 24, ONCE],
    ['FF740', 740, 680, 800, 24, ONCE],
    ['FT65', 65, 50, 80, 'M5', TWICE],
    ['FT75', 75, 60, 90, 'M5', TWICE],
    ['FT85', 85, 70, 105, 'M6', TWICE],
    ['FT100', 100, 80, 120, 'M6', TWICE],
    ['FT115', 115, 95, 140, 'M8', TWICE],
    ['FT130', 130, 110, 160, 'M8', TWICE],
    ['FT165', 165, 130, 200, 'M10', TWICE],
    ['FT215', 215, 180, 250, 'M12', ONCE],
  ])('%s: M %s, N %s, P %s, S %s (%s)', (flange, M, N, P, S) => {
    const { face, system } = dimensionsOf(flange);
    expect(system).toBe('IEC');
    expect(face).toMatchObject({ pitchCircleMm: M, spigotMm: N, outsideMm: P });
    expect(face?.hole).toEqual(typeof S === 'number' ? { throughMm: S } : { thread: S });
  });

  // "FF flanges up to M 350 have four holes; from M 400 up eight": the count is from memory except FF215 and FF500 (one text).
  test.each([
    ['FF165', 4],
    ['FF350', 4],
    ['FF400', 8],
    ['FF500', 8],
    ['FT130', 4],
  ])('%s has %s holes', (flange, holes) => {
    expect(dimensionsOf(flange).face?.holes).toBe(holes);
  });
});

const FIXED = 'EN 50347 Tables 4 to 6 (clause numbers from memory), read in two or more texts';
const FIXED_ONCE = 'EN 50347 Tables 4 to 6 (clause numbers from memory), read in one maker’s sheet';

describe('which flange a frame has', () => {
  test.each<[string, string, string | null, string]>([
    ['IEC 56', 'FF100', 'FT65', FIXED],
    ['63', 'FF115', 'FT75', FIXED],
    ['71', 'FF130', 'FT85', FIXED],
    ['80', 'FF165', 'FT100', FIXED],
    ['90S', 'FF165', 'FT115', FIXED],
    ['90L', 'FF165', 'FT115', FIXED],
    ['100L', 'FF215', 'FT130', FIXED],
    ['112M', 'FF215', 'FT130', FIXED],
    ['132S', 'FF265', 'FT165', FIXED],
    ['132M', 'FF265', 'FT165', FIXED],
    ['160M', 'FF300', 'FT215', FIXED_ONCE],
    ['180L', 'FF300', null, FIXED_ONCE],
    ['200L', 'FF350', null, FIXED_ONCE],
    ['225M', 'FF400', null, FIXED_ONCE],
    ['250M', 'FF500', null, FIXED],
    ['280S', 'FF500', null, FIXED_ONCE],
    ['315M', 'FF600', null, FIXED_ONCE],
    ['355L', 'FF740', null, 'beyond EN 50347: maker practice, one sheet'],
  ])('%s: B5 %s, B14 %s (%s)', (frame, ff, ft) => {
    expect(dimensionsOf(frame, { mounting: 'IM B5' }).face?.name).toBe(ff);
    const tapped = dimensionsOf(frame, { mounting: 'IM B14' }).face;
    if (ft !== null) expect(tapped).toMatchObject({ name: ft, optional: false });
    else expect(tapped).toMatchObject({ pitchCircleMm: null, optional: true });
  });
});

const C = 'NEMA MG 1-2016 4.4.4, circle, rabbet and thread read in two or more charts';
const D = 'NEMA MG 1-2016 4.4.6: from memory';

// AJ bolt circle, AK rabbet, BD outside, in inches; thread or clearance hole.
describe('NEMA faces', () => {
  test.each<[string, number, number, number, number, string | number, string]>([
    ['56C', 5.875, 4.5, 6.5, 4, '3/8-16', C],
    ['143TC', 5.875, 4.5, 6.5, 4, '3/8-16', C],
    ['182TC', 7.25, 8.5, 9, 4, '1/2-13', C],
    ['184TC', 7.25, 8.5, 9, 4, '1/2-13', C],
    ['215TC', 7.25, 8.5, 9, 4, '1/2-13', C],
    ['256TC', 7.25, 8.5, 10, 4, '1/2-13', C],
    ['284TC', 9, 10.5, 11.25, 4, '1/2-13', C],
    ['324TC', 11, 12.5, 14, 4, '5/8-11', C],
    ['365TSC', 11, 12.5, 14, 8, '5/8-11', C],
    ['405TC', 11, 12.5, 15.5, 8, '5/8-11', C],
    ['445TC', 14, 16, 18, 8, '5/8-11', 'NEMA MG 1-2016 4.4.4, thread read in one text'],
    ['184TCH', 5.875, 4.5, 6.5, 4, '3/8-16', 'NEMA MG 1-2016 4.4.4, read in one transcription'],
    ['145JM', 5.875, 4.5, 6.62, 4, '3/8-16', 'NEMA MG 1-2016 Table 18-33, read in two texts'],
    ['254JP', 7.25, 8.5, 10, 4, '1/2-13', 'NEMA MG 1-2016 Table 18-34, read in two texts'],
    ['284JM', 11, 12.5, 14, 4, '5/8-11', 'NEMA MG 1-2016 Table 18-33, read in two texts'],
    ['184TD', 10, 9, 11, 4, 0.53, D],
    ['256TD', 12.5, 11, 14, 4, 0.81, D],
    ['405TD', 20, 18, 22, 8, 0.81, D],
    ['284TP', 9.125, 8.25, 10, 4, 0.44, 'NEMA MG 1-2016 Table 18-30, read in one transcription'],
    ['324VP', 14.75, 13.5, 16.5, 4, 0.69, 'NEMA MG 1-2016 Table 18-28, read in one transcription'],
  ])('%s: AJ %s, AK %s, BD %s, %s holes %s (%s)', (frame, AJ, AK, BD, holes, hole) => {
    const { face } = dimensionsOf(frame);
    expect(face?.pitchCircleMm).toBeCloseTo(AJ * 25.4, 2);
    expect(face?.spigotMm).toBeCloseTo(AK * 25.4, 2);
    expect(face?.outsideMm).toBeCloseTo(BD * 25.4, 1);
    expect(face?.holes).toBe(holes);
    if (typeof hole === 'string') expect(face?.hole).toEqual({ thread: hole });
    else expect(face?.hole).toEqual({ throughMm: expect.closeTo(hole * 25.4, 2) });
  });

  // MG 1-2016 4.4.4, BC (one transcription): shoulder to face 0.12 on 143TC to 184TC, 0.25 from 213TC, −0.19 on 56C.
  test.each([
    ['56C', -0.19],
    ['184TC', 0.12],
    ['213TC', 0.25],
    ['404TSC', 0.25],
  ])('%s: shoulder to face %s in', (frame, inches) => {
    expect(dimensionsOf(frame).face?.shoulderToFaceMm).toBeCloseTo(inches * 25.4, 2);
  });
});
