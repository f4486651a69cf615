import { record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';

/** Ends what is still open of a motor's repair: it is back, or scrapped. */
export async function endRepairStep(tx: Tx, actor: Actor, motorId: string): Promise<void> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    UPDATE repair SET ended_at = clock_timestamp()
    WHERE site_id = ${actor.siteId}::uuid AND motor_id = ${motorId}::uuid AND ended_at IS NULL RETURNING id::text`;
  for (const { id } of rows)
    await record(tx, actor, { action: 'repair.end', thing: 'motor', thingId: motorId, after: { repairId: id } });
}

/** Notes why a motor that came out goes to repair or to scrap. Scrapped is decided, and over. */
export async function openRepairStep(
  tx: Tx,
  actor: Actor,
  { motorId, swapId, reason, isScrapped }: { motorId: string; swapId: string; reason: string; isScrapped: boolean },
): Promise<void> {
  const { siteId, userId } = actor;
  await endRepairStep(tx, actor, motorId);
  const now = new Date();
  const { id } = await tx.repair.create({
    data: {
      ...{ siteId, motorId, swapId, reason, byId: userId },
      ...(isScrapped && { decision: 'scrap', decidedById: userId, decidedAt: now, endedAt: now }),
    },
    select: { id: true },
  });
  const after = { repairId: id, reason, ...(isScrapped && { decision: 'scrap' }) };
  await record(tx, actor, { action: 'repair.open', thing: 'motor', thingId: motorId, after });
}
