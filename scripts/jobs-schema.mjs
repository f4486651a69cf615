// The tables of the job queue: made by the queue's own migrations, used by the program's smaller role.
import pg from 'pg';

/**
 * Makes or renews the queue's schema, lets the program's role use it, and gives back what a killed process had begun:
 * one process works on a data folder, so nobody else can hold a job when this one starts.
 */
export async function deployJobs(url) {
  const { runMigrations } = await import('graphile-worker');
  await runMigrations({ connectionString: url, logger: await quiet() });
  const client = new pg.Client(url);
  await client.connect();
  try {
    await client.query('BEGIN');
    await client.query('SELECT pg_advisory_xact_lock(72707370)');
    const { rows } = await client.query(
      `SELECT relname AS name, relrowsecurity AS walled FROM pg_class
       WHERE relnamespace = 'graphile_worker'::regnamespace AND relkind = 'r'`,
    );
    // The queue walls its tables off from every role but its owner; ours is let in by name below.
    for (const { name, walled } of rows)
      if (walled)
        await client.query(`ALTER TABLE graphile_worker.${pg.escapeIdentifier(name)} DISABLE ROW LEVEL SECURITY`);
    await client.query(`
      GRANT USAGE ON SCHEMA graphile_worker TO bedplate_app;
      GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA graphile_worker TO bedplate_app;
      REVOKE INSERT, UPDATE, DELETE ON graphile_worker.migrations FROM bedplate_app;
      GRANT USAGE, SELECT, UPDATE ON ALL SEQUENCES IN SCHEMA graphile_worker TO bedplate_app;
      GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA graphile_worker TO bedplate_app`);
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    throw error;
  } finally {
    await client.end();
  }
}

/** Gives back the jobs that a process which was killed still holds. */
export async function freeJobs(url) {
  const client = new pg.Client(url);
  await client.connect();
  try {
    await client.query(`UPDATE graphile_worker._private_jobs SET locked_at = NULL, locked_by = NULL, run_at = now()
      WHERE locked_at IS NOT NULL`);
    await client.query('UPDATE graphile_worker._private_job_queues SET locked_at = NULL, locked_by = NULL');
  } finally {
    await client.end();
  }
}

async function quiet() {
  const { Logger } = await import('graphile-worker');
  return new Logger(() => () => {});
}
