import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';

/** What the jobs room works on. */
export const IMPORT_JOB = 'work-on-import';

/**
 * Queues work on an import in the transaction that asks for it, so that neither is without the other. What is queued for
 * the same run already is the same work; it is done as whom it was asked by last.
 */
export async function queueImport(tx: Tx, { siteId, userId }: Actor, runId: string): Promise<void> {
  const payload = JSON.stringify({ siteId, runId, userId });
  await tx.$executeRaw`
    SELECT graphile_worker.add_job(${IMPORT_JOB}, ${payload}::json, job_key => ${`import ${runId}`}, max_attempts => 5)`;
}
