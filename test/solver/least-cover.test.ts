import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastCover } from '@/lib/solver/least-cover';
import { seeded } from '../spares/demand/seeded';
import { anyProgramme, bruteForce, programmeOf } from '../spares/hold/any-programme';
import { hard } from './hard';

describe('The least cover', () => {
  test('is two motors where the greedy choice takes three, as the example of set cover has it', async () => {
    // reference/pump-and-spares/spares-theory.json sc1 (SP-SETCOVER: greedy set cover, ratio bound): exact 2, greedy 3.
    const { programme, names } = programmeOf({ A: [1, 2, 3], B: [4, 5, 6], C: [1, 2, 4, 5], D: [3], E: [6] });
    const found = await leastCover(programme, 10);
    expect(found.columns.map((column) => names[column])).toEqual(['A', 'B']);
    expect(found).toMatchObject({ cost: 2, costBound: 2, ended: 'done' });
    expect(found.greedy.cost).toBe(3);
  });

  test('is what trying every choice finds, in cost and then in tie', async () => {
    await fc.assert(
      fc.asyncProperty(anyProgramme(9, 9), async (programme) => {
        const found = await leastCover(programme, 10);
        expect(found.ended).toBe('done');
        expect([found.cost, found.tie]).toEqual(bruteForce(programme));
        expect([found.costBound, found.tieBound]).toEqual([found.cost, found.tie]);
      }),
      { numRuns: 25 },
    );
  });

  // Motors at 640 to 12 000 in hundredths: a choice comes to some 10 000 and more. Expected: every choice tried.
  test.each([1, 2, 3, 4])('is proven of dear motors as of cheap ones, choice %i', async (from) => {
    const random = seeded(from);
    const columns = Array.from({ length: 11 }, (_, i) => ({
      cost: 64_000 + Math.floor(1_136_000 * random()),
      tie: 1,
      rows: Array.from({ length: 12 }, (_, row) => row).filter((row) => row % 11 === i || random() < 0.3),
    }));
    const programme = { rowCount: 12, columns };
    const found = await leastCover(programme, 10);
    expect([found.cost, found.tie]).toEqual(bruteForce(programme));
    expect([found.costBound, found.tieBound]).toEqual([found.cost, found.tie]);
    expect(found).toMatchObject({ ended: 'done', says: null });
  });

  test('says how far it came when its time is over, with a choice that covers', async () => {
    const programme = hard(60, 120);
    const found = await leastCover(programme, 0.2);
    expect(found.cost).toBeLessThanOrEqual(found.greedy.cost);
    expect(found.costBound).toBeLessThanOrEqual(found.cost);
    const covered = new Set(found.columns.flatMap((column) => programme.columns[column]?.rows ?? []));
    expect(covered.size).toBe(programme.rowCount);
  });

  test('lets others be answered while it is worked on', async () => {
    let ticks = 0;
    const clock = setInterval(() => {
      ticks += 1;
    }, 20);
    await leastCover(hard(60, 120), 1);
    clearInterval(clock);
    expect(ticks).toBeGreaterThan(5);
  });

  test('of a set that nothing covers throws: such a set is told before', async () => {
    await expect(leastCover({ rowCount: 2, columns: [{ cost: 1, tie: 0, rows: [0] }] }, 1)).rejects.toThrow(
      'uncovered',
    );
  });
});
