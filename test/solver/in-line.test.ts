import { describe, expect, test } from 'vitest';
import { lineOf } from '@/lib/solver/in-line';
import { leastCover } from '@/lib/solver/least-cover';
import { solvers } from '@/lib/solver/solve-cover';
import { hard } from './hard';
import { promised } from './promised';

/** Work that ends when it is told to, and notes when it was begun. */
function works(count: number) {
  const begun: number[] = [];
  const ends = Array.from({ length: count }, () => promised<number>());
  const work = (i: number) => () => {
    begun.push(i);
    return (ends[i] as (typeof ends)[number]).promise;
  };
  return { begun, ends, work };
}
const turn = () => new Promise<void>((resolve) => setImmediate(resolve));

describe('A line', () => {
  test('lets so many work at once, the others in the order they came, and turns away who comes behind too many', async () => {
    const { inLine, now } = lineOf(2, 2);
    const { begun, ends, work } = works(5);
    const asked = [0, 1, 2, 3, 4].map((i) => inLine(work(i)));
    expect(now()).toEqual({ working: 2, waiting: 2 });
    expect(await asked[4]).toBeNull();
    expect(begun).toEqual([0, 1]);
    ends[1]?.keep(11);
    expect(await asked[1]).toBe(11);
    await turn();
    expect(begun).toEqual([0, 1, 2]);
    expect(now()).toEqual({ working: 2, waiting: 1 });
    ends[0]?.keep(10);
    ends[2]?.keep(12);
    ends[3]?.keep(13);
    expect(await Promise.all(asked)).toEqual([10, 11, 12, 13, null]);
    expect(now()).toEqual({ working: 0, waiting: 0 });
  });

  test('goes on behind work that throws', async () => {
    const { inLine, now } = lineOf(1, 1);
    const { ends, work } = works(2);
    const [first, second] = [inLine(work(0)), inLine(work(1))];
    ends[0]?.breakIt(new Error('out of memory'));
    ends[1]?.keep(2);
    await expect(first).rejects.toThrow('out of memory');
    expect(await second).toBe(2);
    expect(now()).toEqual({ working: 0, waiting: 0 });
  });
});

test('many choices at once start no more threads than may be, and those turned away get the greedy choice, and why', async () => {
  const programme = hard(12, 24);
  const asked = Array.from({ length: 16 }, () => leastCover(programme, 60));
  const { working, waiting } = solvers.now();
  expect(working).toBeGreaterThan(0);
  expect(working).toBeLessThanOrEqual(4);
  expect(waiting).toBe(8);
  const found = await Promise.all(asked);
  const away = found.slice(working + waiting);
  expect(away.length).toBe(16 - working - waiting);
  const least = found[0]?.cost;
  for (const one of found.slice(0, working + waiting)) expect(one).toMatchObject({ ended: 'done', cost: least });
  for (const one of away) {
    expect(one).toMatchObject({ ended: 'none', columns: one.greedy.columns });
    expect(one.says).toContain('too many others were being solved');
    expect(one.costBound).toBeLessThanOrEqual(Number(least));
  }
  expect(solvers.now()).toEqual({ working: 0, waiting: 0 });
});
