import { createHash, randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { MOST_AT_ONCE, parts } from './parts';

export interface PastSwap {
  at: Date;
  setId: string;
  motorInId: string;
  motorOutId: string | null;
  outTo: 'at-repair' | 'on-shelf' | 'scrapped' | null;
  why: string;
  note?: string | null;
  hours?: number | null;
  workDone?: { id: string; what: string; hours: number }[];
}

/** Takes over swaps done before the register began: history only, no motor moves, and nothing was judged. */
export async function registerPastSwaps(actor: Actor, swaps: readonly PastSwap[]): Promise<void> {
  must(actor, 'motor.edit');
  const { siteId, userId } = actor;
  await db.$transaction(
    async (tx) => {
      for (const part of parts(swaps))
        await tx.swap.createMany({
          data: part.map(({ workDone, note, hours, ...swap }) => ({
            ...swap,
            siteId,
            byId: userId,
            note: note ?? null,
            hours: hours ?? null,
            workDone: (workDone ?? []) as Prisma.InputJsonArray,
            key: randomUUID(),
            bodySha256: createHash('sha256').update(JSON.stringify(swap)).digest('hex'),
          })),
        });
      await record(tx, actor, {
        action: 'swap.take-over',
        thing: 'site',
        thingId: siteId,
        after: { swaps: swaps.length },
      });
    },
    { timeout: MOST_AT_ONCE },
  );
}
