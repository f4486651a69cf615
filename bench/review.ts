// npm run bench:review: what the review and the cover of a site cost in the register, over plants of n, 2n and 4n: the first
// look after a start (the cover's reads the plant, the review's comes behind it), the next one, and the one after a plate was changed. On a database of its own.
import type { CoverFilter } from '@/lib/register/cover-filter';
import { ALL_OPEN } from '@/lib/review/list/review-filter';
import { fillPlant } from './fill-plant';
import { onOwnDatabase } from './on-own-database';

const CHANGES = 12;
const PAGE = { page: 1, perPage: 50 };
const OF_ALL: CoverFilter = {
  ...{ q: null, areaId: null, criticality: null, state: null },
  ...{ sort: 'criticality', isDown: false },
};
const median = (all: readonly number[]) => [...all].sort((a, b) => a - b)[all.length >> 1] as number;
const ms = (figure: number) => `${figure.toFixed(0).padStart(6)} ms`;

async function timed(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

await onOwnDatabase(bench);

async function bench(): Promise<void> {
  const { db } = await import('@/lib/db/client');
  const { changeThings } = await import('@/lib/register/commands/change-things');
  const { review } = await import('@/lib/register/queries/review');
  const { coverOfSets } = await import('@/lib/register/queries/cover-of-sets');
  let changes = 0;
  for (const n of [1, 2, 4]) {
    const size = { sets: 1_250 * n, spares: 750 * n };
    const { actor, motors } = await fillPlant({ ...size, swaps: 0 });
    await db.$executeRaw`ANALYZE`; // as the database does by itself a minute later
    const all = [...motors.values()];
    const looks = [
      ['cover', () => coverOfSets(actor, OF_ALL, PAGE)],
      ['review', () => review(actor, { filter: ALL_OPEN, today: '2026-11-28' }, PAGE)],
    ] as const;
    for (const [what, look] of looks) {
      const first = await timed(look);
      const again = await timed(look);
      const changed: number[] = [];
      for (let i = 0; i < CHANGES; i += 1) {
        changes += 1;
        const id = all[(i * 131 + n) % all.length] as string;
        const done = await changeThings(actor, [{ thing: 'motor', id, version: null, edit: { massKg: 50 + changes } }]);
        if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
        changed.push(await timed(look));
      }
      console.log(
        `${what.padEnd(7)} ${size.sets} sets × ${size.spares} spares: first look ${ms(first)}, again ${ms(again)}, after a change ${ms(median(changed))}`,
      );
    }
  }
  await db.$disconnect();
}
