import { record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';

/** By what a fault is closed: a swap, or a repair where it stands with what was done. */
export type ClosedBy = { by: 'swap'; swapId: string } | { by: 'repair'; how: string; doneAt: string | null };

/**
 * Closes the open faults of a set, all or the one named, at the server's own moment; the ids of those it closed. The
 * moment is the statement's own: a transaction that waited for a lock began before faults that it closes.
 */
export async function closeStep(
  tx: Tx,
  actor: Actor,
  { setId, faultId }: { setId: string; faultId: string | null },
  closed: ClosedBy,
): Promise<string[]> {
  const how = closed.by === 'repair' ? closed.how : null;
  const swapId = closed.by === 'swap' ? closed.swapId : null;
  const rows = await tx.$queryRaw<{ id: string }[]>`
    UPDATE fault SET closed_at = clock_timestamp(), closed_by = ${closed.by}, closed_by_id = ${actor.userId},
      closed_how = ${how}, swap_id = ${swapId}::uuid
    WHERE site_id = ${actor.siteId}::uuid AND set_id = ${setId}::uuid AND closed_at IS NULL
      AND (${faultId}::uuid IS NULL OR id = ${faultId}::uuid)
    RETURNING id::text`;
  const after = closed.by === 'swap' ? { swapId: closed.swapId } : { how: closed.how, doneAt: closed.doneAt };
  if (rows.length > 0)
    await record(
      tx,
      actor,
      ...rows.map(({ id }) => ({
        ...{ action: 'fault.close', thing: 'set', thingId: setId },
        ...{ before: { faultId: id }, after: { faultId: id, ...after } },
      })),
    );
  return rows.map(({ id }) => id);
}
