import { describe, expect, test } from 'vitest';
import type { MotorInput } from '@/lib/plant/motor';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { motor } from '../matching/easy';

const of = (differs: Partial<MotorInput>) => motorDimensions(motor(differs));

describe('what a person measured wins over the frame', () => {
  test.each([
    ['shaftHeightMm', 'shaftHeightMm', 112],
    ['holesAcrossMm', 'holesAcrossMm', 191.5],
    ['holesAlongMm', 'holesAlongMm', 140.1],
    ['holeMm', 'footHoleMm', 12],
    ['holeToShoulderMm', 'holeToShoulderMm', 71],
    ['shaftDiameterMm', 'shaftDiameterMm', 28],
    ['shaftLengthMm', 'shaftLengthMm', 60],
    ['keyWidthMm', 'keyWidthMm', 8],
  ] as const)('%s', (measured, name, value) => {
    const { dimensions } = of({ measured: { [measured]: value } });
    expect(dimensions[name]).toMatchObject({ value, origin: 'measured', status: null, alternatives: [] });
    const other = name === 'footHoleMm' ? 'shaftHeightMm' : 'footHoleMm';
    expect(dimensions[other].origin).toBe('standard');
  });

  test('a measured pattern on a motor with two takes the place of both', () => {
    const { holesAlongMm } = of({ frame: '182/4T', measured: { holesAlongMm: 127 } }).dimensions;
    expect(holesAlongMm).toMatchObject({ value: 127, alternatives: [] });
  });

  test('it fills what a suffix voids and what no frame tells', () => {
    expect(of({ frame: '184TZ', measured: { shaftDiameterMm: 30 } }).dimensions.shaftDiameterMm.value).toBe(30);
    const none = of({ frame: null, measured: { shaftHeightMm: 100 } });
    expect(none.dimensions.shaftHeightMm).toMatchObject({ value: 100, origin: 'measured' });
    expect(none.dimensions.holesAlongMm).toMatchObject({ value: null, origin: 'unknown', cite: 'no frame is told' });
  });

  test('a face measured changes the face the frame names, and makes none', () => {
    const face = of({ frame: '184TC', measured: { spigotMm: 200, pitchCircleMm: 180 } }).face;
    // Holes on another circle are not those that 4.4.4 threads 1/2-13.
    expect(face).toMatchObject({ kind: 'C', spigotMm: 200, pitchCircleMm: 180, hole: null, outsideMm: null });
    const same = of({ frame: '184TC', measured: { spigotMm: 200, pitchCircleMm: 184 } }).face;
    expect(same).toMatchObject({ kind: 'C', spigotMm: 200, pitchCircleMm: 184, hole: { thread: '1/2-13' } });
    expect(face?.cite).toContain('measured by a person');
    expect(of({ frame: '184T', measured: { spigotMm: 200 } }).face).toBeNull();
  });

  test('a tape tells no ISO class', () => {
    expect(of({ frame: '132S', mounting: 'IM B3' }).shaftFit).toBe('k6');
    expect(of({ frame: '132S', mounting: 'IM B3', measured: { shaftDiameterMm: 38 } }).shaftFit).toBeNull();
  });

  test('a shaft that is not the frame’s leaves the key unknown; the frame’s own keeps it', () => {
    const { keyWidthMm } = of({ measured: { shaftDiameterMm: 30 } }).dimensions;
    expect(keyWidthMm).toMatchObject({ value: null, origin: 'unknown' });
    expect(keyWidthMm.cite).toBe('the shaft measured is not that of 184T: measure its key');
    const smaller = of({ measured: { shaftDiameterMm: 22.2 } }).dimensions.keyWidthMm; // 7/8 in: MG 1 4.4.1 S 0.188
    expect(smaller.cite).toContain('(4.78 mm is usual on 22.2 mm)');
    expect(of({ measured: { shaftDiameterMm: 28.6 } }).dimensions.keyWidthMm.origin).toBe('standard');
    expect(of({ measured: { shaftDiameterMm: 30, keyWidthMm: 10 } }).dimensions.keyWidthMm.value).toBe(10);
  });
});

/** The marks are those of NEMA MG 1 and IEC 60034-12; power in hp or kW alone is common practice, no source. */
describe('a bare 56 or 225 follows the other marks of its plate, and stays unknown without them', () => {
  const bare = { frame: '56', design: null, codeLetter: null, mounting: null, ratings: [] };
  const hp = [{ volts: 230, hertz: 60, hp: 0.5 }];
  const kw = [{ volts: 400, hertz: 50, kw: 0.09 }];
  test.each<[string, Partial<MotorInput>, 'NEMA' | 'IEC' | null]>([
    ['nothing else', {}, null],
    ['a code letter', { codeLetter: 'J' }, 'NEMA'],
    ['design B', { design: 'B' }, 'NEMA'],
    ['design N', { design: 'N' }, 'IEC'],
    ['design N with a code letter', { design: 'N', codeLetter: 'J' }, null],
    ['hp', { ratings: hp }, 'NEMA'],
    ['kW alone', { ratings: kw }, null],
    ['kW and an IM code', { ratings: kw, mounting: 'IM B3' }, 'IEC'],
    ['hp and an IM code', { ratings: hp, mounting: 'IM B3' }, 'NEMA'],
    ['an IM code alone', { mounting: 'IM B3' }, null],
    ['an IM code with a flange', { mounting: 'IM B14' }, 'IEC'],
    ['its own word', { frame: 'NEMA 56', ratings: kw }, 'NEMA'],
    ['poles', { poles: 2 }, null],
  ])('%s', (_, differs, system) => {
    const dimensions = of({ ...bare, ...differs });
    expect(dimensions.system).toBe(system);
    const height = { NEMA: 88.9, IEC: 56 }; // NEMA MG 1 4.4.1 D 3.50 in, IEC 60072-1 H 56
    expect(dimensions.dimensions.shaftHeightMm.value).toBe(system === null ? null : height[system]);
    if (system === null) expect(dimensions.dimensions.shaftHeightMm.cite).toContain('"NEMA 56" or "IEC 56"');
  });

  test('a frame of one system needs no such marks', () => {
    expect(of({ ...bare, frame: '132S' }).system).toBe('IEC');
    expect(of({ ...bare, frame: '184T', design: 'N' }).system).toBe('NEMA');
  });
});

test('contradictions leave the mounting unknown, not the frame', () => {
  const { holding, dimensions } = of({ frame: '100L-4 B35', mounting: 'IM B5' });
  expect(holding).toMatchObject({ feet: null, face: null });
  expect(dimensions.shaftDiameterMm.value).toBe(28);
});

test('poles of frame and plate that differ leave the shaft unknown', () => {
  expect(of({ frame: '280M-2', mounting: 'IM B3', poles: 4 }).dimensions.shaftDiameterMm.value).toBeNull();
  expect(of({ frame: '280M-2', mounting: 'IM B3', poles: 2 }).dimensions.shaftDiameterMm.value).toBe(65);
});

test('one motor is worked out once', () => {
  const one = motor({ measured: { shaftHeightMm: 112 } });
  expect(motorDimensions(one)).toBe(motorDimensions(one));
});
