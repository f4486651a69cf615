/** Runs once in each process before it answers; the jobs run where the pages do. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { startJobs } = await import('@/lib/jobs/start-jobs');
  const jobs = await startJobs(String(process.env.DATABASE_URL));
  // scripts/web.mjs calls it when the program ends.
  (globalThis as { [ENDING]?: () => Promise<void> })[ENDING] = () => jobs.stop();
}

const ENDING = Symbol.for('bedplate.ending');
