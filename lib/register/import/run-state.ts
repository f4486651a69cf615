import type { Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import type { RunStatus } from './run';

export interface RunKey {
  siteId: string;
  runId: string;
}

/**
 * Whether the run still has the status, which then stands until the transaction ends: a person who cancels it waits for
 * the batch in hand, and the next batch sees it.
 */
export async function isStill(tx: Tx, { siteId, runId }: RunKey, status: RunStatus): Promise<boolean> {
  const rows = await tx.$queryRaw<unknown[]>`
    SELECT 1 FROM import_run WHERE site_id = ${siteId}::uuid AND id = ${runId}::uuid AND status = ${status}
    FOR NO KEY UPDATE`;
  return rows.length > 0;
}

/** Leads a run from one status to the next; false when it has another by now. */
export async function toStatus(
  tx: Tx,
  { siteId, runId }: RunKey,
  from: RunStatus,
  to: { status: RunStatus } & Prisma.ImportRunUpdateManyMutationInput,
): Promise<boolean> {
  const { count } = await tx.importRun.updateMany({
    where: { siteId, id: runId, status: from },
    data: { ...to, changedAt: new Date() },
  });
  return count === 1;
}
