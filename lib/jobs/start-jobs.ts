import { randomUUID } from 'node:crypto';
import { EventEmitter } from 'node:events';
import { Logger, run, type WorkerEvents } from 'graphile-worker';
import { z } from 'zod';
import { db } from '@/lib/db/client';
import { IMPORT_JOB } from '@/lib/register/commands/queue-job';
import { giveUpImport, workOnImport } from '@/lib/register/import/work-on-import';
import { keepReviewDays } from '@/lib/register/review/keep-review-day';

const importWork = z.object({ siteId: z.uuid(), runId: z.uuid(), userId: z.string() });

const ENDS = 'the program ends';

/** How each site's review stands today: the last of a day, wherever the site is, is what the day ended with. */
const REVIEW_DAYS_JOB = 'keep-review-days';
const EVERY_HOUR = '17 * * * *';

/** How long a job has at the end to finish the batch in hand. */
const LAST_BATCH_MS = 5_000;

export interface Jobs {
  stop: () => Promise<void>;
}

/** Works on what is queued, one job at a time, until it is stopped. A job that was broken off begins again. */
export async function startJobs(connectionString: string): Promise<Jobs> {
  const ending = new AbortController();
  const events: WorkerEvents = new EventEmitter();
  let poolId = '';
  events.on('pool:create', ({ workerPool }) => {
    poolId = workerPool.id;
  });
  const runner = await run({
    connectionString,
    events,
    concurrency: 1,
    maxPoolSize: 3,
    noHandleSignals: true,
    pollInterval: 2_000,
    gracefulShutdownAbortTimeout: LAST_BATCH_MS,
    logger: new Logger(() => (level, message) => {
      if (level === 'error') console.error(`jobs: ${message}`);
    }),
    crontab: `${EVERY_HOUR} ${REVIEW_DAYS_JOB}`,
    taskList: {
      [REVIEW_DAYS_JOB]: () => keepReviewDays(ending.signal),
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
      ending.abort(new Error(ENDS));
      await runner.stop().catch(() => {});
      await given(poolId).catch((error) => console.error('jobs: one was not given back', error));
    },
  };
}

/** Gives back the job that was broken off, as if it had not been begun: the queue itself does not wait until it has. */
async function given(poolId: string): Promise<void> {
  await db.$executeRaw`
    UPDATE graphile_worker._private_jobs
    SET locked_at = NULL, locked_by = NULL, run_at = now(), attempts = greatest(attempts - 1, 0)
    WHERE locked_by = ${poolId} OR (last_error LIKE ${`${ENDS}%`} AND locked_at IS NULL)`;
}
