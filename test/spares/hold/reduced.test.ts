import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { greedy, harmonic } from '@/lib/spares/hold/greedy';
import type { Programme } from '@/lib/spares/hold/programme';
import { reduced } from '@/lib/spares/hold/reduced';
import { verified } from '@/lib/spares/hold/verified';
import { anyProgramme, bruteForce, programmeOf } from './any-programme';

const column = (cost: number, ...rows: number[]) => ({ cost, tie: 0, rows });

describe('The rules of reduction', () => {
  test('leave cost and tie of the best as they are', () => {
    fc.assert(
      fc.property(anyProgramme(8, 10), (whole) => {
        const { programme, forced } = reduced(whole);
        const { cost, tie } = verified(whole, forced);
        const [restCost, restTie] = programme.rowCount === 0 ? [0, 0] : bruteForce(programme);
        expect([cost + restCost, tie + restTie]).toEqual(bruteForce(whole));
      }),
      { numRuns: 500 },
    );
  });

  test('a choice of what is left, with what is forced, covers the whole', () => {
    fc.assert(
      fc.property(anyProgramme(8, 10), (whole) => {
        const { programme, forced, columnOf } = reduced(whole);
        const chosen = [...forced, ...greedy(programme).map((one) => columnOf[one] as number)];
        expect(verified(whole, chosen).uncovered).toEqual([]);
      }),
    );
  });

  const cases: [string, Programme, { forced: number[]; left: number[] }][] = [
    [
      'a motor that alone serves a set is forced',
      { rowCount: 2, columns: [column(9, 0), column(1, 1)] },
      { forced: [0, 1], left: [] },
    ],
    [
      'a set served by all that serve another, and by more, goes',
      // Row 1 is covered by whatever covers row 0; with it gone, the cheapest for row 0 is all there is.
      { rowCount: 2, columns: [column(2, 0, 1), column(3, 0, 1), column(1, 1)] },
      { forced: [0], left: [] },
    ],
    [
      'a motor that serves less at no lower cost goes; at a lower cost it stays',
      { rowCount: 3, columns: [column(2, 0, 1), column(2, 1, 2), column(2, 0, 2), column(2, 0), column(1, 1)] },
      { forced: [], left: [0, 1, 2, 4] },
    ],
    [
      'of two alike the first stays',
      { rowCount: 3, columns: [column(2, 0, 1), column(2, 0, 1), column(2, 1, 2), column(2, 0, 2)] },
      { forced: [], left: [0, 2, 3] },
    ],
  ];
  test.each(cases)('%s', (_name, whole, expected) => {
    const { forced, columnOf } = reduced(whole);
    expect({ forced, left: columnOf }).toEqual(expected);
  });

  test('a set that nothing serves is refused', () => {
    expect(() => reduced({ rowCount: 2, columns: [column(1, 0)] })).toThrow('no column covers row 1');
  });
});

describe('The greedy choice', () => {
  test('takes C first, and three where two do', () => {
    // spares-theory.json sc1 (SP-SETCOVER)
    const { programme, names } = programmeOf({ A: [1, 2, 3], B: [4, 5, 6], C: [1, 2, 4, 5], D: [3], E: [6] });
    const chosen = greedy(programme);
    expect(chosen.map((one) => names[one])[0]).toBe('C');
    expect(chosen).toHaveLength(3);
  });

  test('costs at most the harmonic number times the best', () => {
    // Set cover: the ratio is at most H(n) (spares-theory.json cover, SP-SETCOVER, gives the looser ln |X| + 1).
    fc.assert(
      fc.property(anyProgramme(9, 9), (programme) => {
        const [best] = bruteForce(programme);
        expect(verified(programme, greedy(programme)).cost).toBeLessThanOrEqual(best * harmonic(programme) + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  test('comes to that bound where it must', () => {
    // The textbook's worst case: one column of all rows at 1 + ε, and singles at 1/n, 1/(n−1), …; here in whole numbers.
    const singles = [12, 15, 20, 30, 60];
    const programme = {
      rowCount: 5,
      columns: [...singles.map((cost, i) => column(cost, i)), column(61, 0, 1, 2, 3, 4)],
    };
    expect(verified(programme, greedy(programme)).cost).toBe(137); // 60 × H(5) = 137
    expect(bruteForce(programme)[0]).toBe(61);
  });
});

describe('A choice is verified', () => {
  const { programme } = programmeOf({ A: [1, 2], B: [2, 3] });
  test('by what it leaves uncovered and what it costs', () => {
    expect(verified(programme, [0])).toEqual({ cost: 1, tie: 0, uncovered: [2] });
    expect(verified(programme, [0, 1])).toEqual({ cost: 2, tie: 0, uncovered: [] });
  });
  test('and refused when it names a column twice, or one that is not there', () => {
    expect(() => verified(programme, [0, 0])).toThrow('twice');
    expect(() => verified(programme, [7])).toThrow('not there');
  });
});
