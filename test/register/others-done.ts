import { expect } from 'vitest';
import { db } from '@/lib/db/client';

/**
 * Waits until all transactions are over that were at work when it was called, in whatever database of the server: another
 * file's test may run beside, and a cursor stands at the oldest transaction of them all.
 */
export async function othersDone(): Promise<void> {
  const one = async () => {
    const [row] = await db.$queryRaw<{ from: bigint; before: bigint }[]>`
      SELECT pg_snapshot_xmin(s)::text::bigint AS from, pg_snapshot_xmax(s)::text::bigint AS before
      FROM pg_current_snapshot() AS s`;
    if (row === undefined) throw new Error('no snapshot');
    return row;
  };
  const { before } = await one();
  await expect.poll(async () => (await one()).from >= before, { interval: 20 }).toBe(true);
}
