import { describe, expect, test } from 'vitest';
import { readFrame } from '@/lib/standards/dimensions-of';
import { standardRatings } from '@/lib/standards/standard-ratings';

describe('standard ratings', () => {
  test.each(['NEMA', 'IEC'] as const)('%s: each power and speed once, with a frame that can be read', (system) => {
    const ratings = standardRatings(system);
    const pairs = ratings.map(({ kw, poles }) => `${kw} ${poles}`);
    expect(new Set(pairs).size).toBe(pairs.length);
    for (const { frame, poles, kw } of ratings) {
      const read = readFrame(frame, { system, poles });
      expect(read.ok && read.value.frame).toBe(frame);
      expect([2, 4, 6, 8]).toContain(poles);
      expect(kw).toBeGreaterThan(0);
    }
  });

  test.each(['NEMA', 'IEC'] as const)('%s: at one speed more power never needs a smaller motor', (system) => {
    for (const poles of [2, 4, 6, 8]) {
      const sizes = standardRatings(system)
        .filter((one) => one.poles === poles)
        .sort((a, b) => a.kw - b.kw)
        .map(({ frame }) => {
          const read = readFrame(frame, { system, poles });
          return read.ok ? (read.value.dimensions.shaftHeightMm.value ?? 0) : 0;
        });
      expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
    }
  });

  test('NEMA keeps hp as printed beside kW; IEC prints kW alone', () => {
    const five = standardRatings('NEMA').find(({ hp, poles }) => hp === 5 && poles === 4);
    expect(five?.kw).toBeCloseTo(3.7285, 4); // 550 ft·lbf/s
    expect(standardRatings('IEC').every(({ hp }) => hp === null)).toBe(true);
  });

  test('how well each was read stays with it, and what is beyond the standard says so', () => {
    const of = (kw: number, poles: number) =>
      standardRatings('IEC').find((one) => one.kw === kw && one.poles === poles);
    expect(of(4, 4)).toMatchObject({ status: 'published-2', cite: 'EN 50347 output assignment (read in two texts)' });
    expect(of(3, 4)).toMatchObject({ status: 'published' });
    expect(of(0.12, 4)).toMatchObject({ status: 'memory', cite: 'EN 50347 output assignment (from memory)' });
    expect(of(200, 4)?.cite).toContain('beyond EN 50347');
    // The 1800 rpm, 60 hp short shaft is from memory though its long shaft was read.
    expect(standardRatings('NEMA').find(({ hp, poles }) => hp === 60 && poles === 4)?.status).toBe('memory');
  });
});
