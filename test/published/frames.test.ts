import { describe, expect, test } from 'vitest';
import type { DimensionName } from '@/lib/standards/dimension';
import { dimensionsOf } from '@/lib/standards/dimensions-of';

// The symbols of the standards and what they are here.
const NEMA = {
  D: 'shaftHeightMm',
  '2E': 'holesAcrossMm',
  '2F': 'holesAlongMm',
  BA: 'holeToShoulderMm',
  H: 'footHoleMm',
  U: 'shaftDiameterMm',
  'N-W': 'shaftLengthMm',
  S: 'keyWidthMm',
} as const satisfies Record<string, DimensionName>;
const IEC = {
  H: 'shaftHeightMm',
  A: 'holesAcrossMm',
  B: 'holesAlongMm',
  C: 'holeToShoulderMm',
  K: 'footHoleMm',
  D: 'shaftDiameterMm',
  E: 'shaftLengthMm',
  F: 'keyWidthMm',
} as const satisfies Record<string, DimensionName>;

const T_FRAMES = 'NEMA MG 1-2016 4.4.1, read in two dimension charts';
const T_ONE = 'NEMA MG 1-2016 4.4.1, read in one transcription';
const C_FACE_BA = 'NEMA MG 1-2016 4.4.4, BA of footed C-face motors, read in two texts';
const U_CHART = 'NEMA MG 1, 1952 series, read in one large frame chart';
const MEMORY_U = 'NEMA MG 1, 1952 series: from memory';
const MEMORY_OLD = 'NEMA MG 1, before 1952: from memory';

// Inches as printed: two decimals stand for the fraction (2.12 is 2-1/8), so 0.01 in is agreement.
describe('NEMA frames, inches', () => {
  test.each<[string, keyof typeof NEMA, number, string]>([
    ['NEMA 56', 'D', 3.5, T_FRAMES],
    ['NEMA 56', '2E', 4.88, T_FRAMES],
    ['NEMA 56', '2F', 3, T_FRAMES],
    ['NEMA 56', 'U', 0.625, T_FRAMES],
    ['NEMA 56', 'N-W', 1.88, T_FRAMES],
    ['48', 'D', 3, T_FRAMES],
    ['48', 'U', 0.5, T_FRAMES],
    ['143T', 'D', 3.5, T_FRAMES],
    ['143T', '2E', 5.5, T_FRAMES],
    ['143T', '2F', 4, T_FRAMES],
    ['143T', 'U', 0.875, T_FRAMES],
    ['143T', 'N-W', 2.25, T_FRAMES],
    ['145T', '2F', 5, T_FRAMES],
    ['143TC', 'BA', 2.75, C_FACE_BA],
    ['182T', '2F', 4.5, T_FRAMES],
    ['184T', 'D', 4.5, T_FRAMES],
    ['184T', '2E', 7.5, T_FRAMES],
    ['184T', '2F', 5.5, T_FRAMES],
    ['184T', 'BA', 2.75, T_FRAMES],
    ['184TC', 'BA', 3.5, C_FACE_BA],
    ['184T', 'H', 0.41, T_FRAMES],
    ['184T', 'U', 1.125, T_FRAMES],
    ['184T', 'N-W', 2.75, T_FRAMES],
    ['184T', 'S', 0.25, T_FRAMES],
    ['213T', 'D', 5.25, T_FRAMES],
    ['213T', 'U', 1.375, T_FRAMES],
    ['213T', 'N-W', 3.38, T_FRAMES],
    ['215T', '2F', 7, T_FRAMES],
    ['215TC', 'BA', 4.25, C_FACE_BA],
    ['254T', 'D', 6.25, T_FRAMES],
    ['254T', '2E', 10, T_FRAMES],
    ['254T', 'U', 1.625, T_FRAMES],
    ['254T', 'S', 0.375, T_FRAMES],
    ['256T', '2F', 10, T_FRAMES],
    ['284T', 'U', 1.875, T_FRAMES],
    ['284TS', 'U', 1.625, T_ONE],
    ['284TS', 'N-W', 3.25, T_ONE],
    ['286T', '2F', 11, T_FRAMES],
    ['324T', 'D', 8, T_FRAMES],
    ['324T', 'U', 2.125, T_FRAMES],
    ['324T', 'N-W', 5.25, T_ONE],
    ['326TS', 'U', 1.875, T_ONE],
    ['364T', '2E', 14, T_FRAMES],
    ['365T', '2F', 12.25, T_FRAMES],
    ['404T', 'U', 2.875, T_FRAMES],
    ['405T', 'BA', 6.62, T_FRAMES],
    ['444T', 'D', 11, T_FRAMES],
    ['444TS', 'U', 2.375, T_ONE],
    ['449T', '2F', 25, T_FRAMES],
    ['184', 'U', 0.875, U_CHART],
    ['215', 'U', 1.125, U_CHART],
    ['254U', 'D', 6.25, 'NEMA MG 1, 1952 series, read in two charts'],
    ['254U', 'U', 1.375, MEMORY_U],
    ['326U', 'U', 1.875, MEMORY_U],
    ['254', 'U', 1.125, MEMORY_OLD],
    ['445', 'U', 2.375, MEMORY_OLD],
  ])('%s %s is %s in (%s)', (frame, symbol, inches) => {
    const { value } = dimensionsOf(frame).dimensions[NEMA[symbol]];
    expect(Math.abs((value ?? Number.NaN) - inches * 25.4)).toBeLessThanOrEqual(0.254);
  });

  // MG 1-2016 4.4.1: D is never above nominal and at most 0.06 in below; 4.9.1: U to 1-1/2 in +0 −0.0005 in (one text each).
  test('limits of 184T', () => {
    const { shaftHeightMm, shaftDiameterMm, holesAlongMm } = dimensionsOf('184T').dimensions;
    expect(shaftHeightMm).toMatchObject({ plus: 0, minus: 1.524 });
    expect(shaftDiameterMm).toMatchObject({ plus: 0, minus: 0.013 });
    expect(holesAlongMm).toMatchObject({ plus: 0.762, minus: 0.762 }); // 2F ± 0.03 in
  });

  // MG 1-2016 Table 18-33 and 18-34, limits in inches, read in two texts: U 0.8745 to 0.8740, AH 4.281 to 4.219.
  test('the pump shaft of 145JM and 215JP', () => {
    const jm = dimensionsOf('145JM').dimensions;
    expect(jm.shaftDiameterMm.value).toBeCloseTo(0.8745 * 25.4, 2);
    expect(jm.shaftLengthMm.value).toBeCloseTo(4.25 * 25.4, 1);
    const jp = dimensionsOf('215JP').dimensions;
    expect(jp.shaftDiameterMm.value).toBeCloseTo(1.2495 * 25.4, 2);
    expect(jp.shaftLengthMm.value).toBeCloseTo(8.125 * 25.4, 1);
  });
});

const FEET = 'IEC 60072-1, feet, read in two or more texts';
const FEET_ONE = 'IEC 60072-1, feet, read in one maker’s sheet';
const SHAFT = 'EN 50347, shaft end, read in two or more texts';

describe('IEC frames, mm', () => {
  test.each<[string, number | null, keyof typeof IEC, number, string]>([
    ['IEC 56', null, 'A', 90, FEET_ONE],
    ['63', null, 'A', 100, FEET],
    ['71', null, 'B', 90, FEET],
    ['71', null, 'D', 14, SHAFT],
    ['80', null, 'C', 50, FEET],
    ['80', null, 'D', 19, SHAFT],
    ['80', null, 'E', 40, SHAFT],
    ['90S', null, 'B', 100, FEET],
    ['90L', null, 'A', 140, FEET],
    ['90L', null, 'B', 125, FEET],
    ['90L', null, 'C', 56, FEET],
    ['90L', null, 'D', 24, SHAFT],
    ['90L', null, 'E', 50, SHAFT],
    ['100L', null, 'A', 160, FEET],
    ['100L', null, 'B', 140, FEET],
    ['100L', null, 'C', 63, FEET],
    ['112M', null, 'H', 112, FEET],
    ['112M', null, 'A', 190, FEET],
    ['112M', null, 'B', 140, FEET],
    ['112M', null, 'C', 70, FEET],
    ['112M', null, 'K', 12, FEET],
    ['112M', null, 'D', 28, SHAFT],
    ['112M', null, 'E', 60, SHAFT],
    ['132S', null, 'A', 216, FEET],
    ['132S', null, 'B', 140, FEET],
    ['132M', null, 'B', 178, FEET],
    ['132M', null, 'D', 38, SHAFT],
    ['160M', null, 'A', 254, FEET],
    ['160M', null, 'B', 210, FEET],
    ['160L', null, 'B', 254, FEET],
    ['160L', null, 'D', 42, SHAFT],
    ['180M', null, 'B', 241, FEET],
    ['180L', null, 'A', 279, FEET],
    ['180L', null, 'D', 48, SHAFT],
    ['200L', null, 'B', 305, FEET],
    ['200L', null, 'D', 55, SHAFT],
    ['225S', 4, 'B', 286, FEET],
    ['225M', 4, 'D', 60, SHAFT],
    ['225M', 2, 'D', 55, SHAFT],
    ['225M', 2, 'E', 110, SHAFT],
    ['250M', 4, 'A', 406, FEET_ONE],
    ['250M', 4, 'D', 65, SHAFT],
    ['250M', 2, 'D', 60, SHAFT],
    ['280S', 4, 'B', 368, FEET],
    ['280M', 4, 'D', 75, SHAFT],
    ['280M', 2, 'D', 65, SHAFT],
    ['315M', 4, 'A', 508, FEET],
    ['315M', 6, 'D', 80, SHAFT],
    ['315M', 2, 'D', 65, SHAFT],
    ['315L', 4, 'E', 170, SHAFT],
  ])('%s with poles %s: %s is %s mm (%s)', (frame, poles, symbol, mm) => {
    expect(dimensionsOf(frame, { poles }).dimensions[IEC[symbol]].value).toBe(mm);
  });
});
