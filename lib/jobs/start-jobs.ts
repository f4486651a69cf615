import { randomUUID } from 'node:crypto';
import { Logger, run } from 'graphile-worker';
import { z } from 'zod';
import { IMPORT_JOB } from '@/lib/register/commands/queue-job';
import { giveUpImport, workOnImport } from '@/lib/register/import/work-on-import';

const importWork = z.object({ siteId: z.uuid(), runId: z.uuid(), userId: z.string() });

/** How long a job has at the end to finish the batch in hand. */
const LAST_BATCH_MS = 5_000;

export interface Jobs {
  stop: () => Promise<void>;
}

/** Works on what is queued, one job at a time, until it is stopped. A job that was broken off begins again. */
export async function startJobs(connectionString: string): Promise<Jobs> {
  const ending = new AbortController();
  const runner = await run({
    connectionString,
    concurrency: 1,
    maxPoolSize: 3,
    noHandleSignals: true,
    pollInterval: 2_000,
    gracefulShutdownAbortTimeout: LAST_BATCH_MS,
    logger: new Logger(() => (level, message) => {
      if (level === 'error') console.error(`jobs: ${message}`);
    }),
    taskList: {
      [IMPORT_JOB]: async (payload, { job }) => {
        const work = importWork.parse(payload);
        try {
          await workOnImport(work, ending.signal);
        } catch (error) {
          if (!ending.signal.aborted && job.attempts >= job.max_attempts) {
            const reference = randomUUID().slice(0, 8);
            console.error(`${reference} an import failed`, error);
            await giveUpImport(work, reference);
          }
          throw error;
        }
      },
    },
  });
  runner.promise.catch((error) => console.error('jobs: ended', error));
  return {
    async stop() {
      ending.abort(new Error('the program ends'));
      await runner.stop().catch(() => {});
    },
  };
}
