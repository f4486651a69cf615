import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { deploy } from '../scripts/migrate.mjs';
import { startPostgres } from '../scripts/pg.mjs';

/** Does the work on a throw-away database; what opens the client is imported within. */
export async function onOwnDatabase(work: () => Promise<void>): Promise<void> {
  const dataDir = mkdtempSync(path.join(os.tmpdir(), 'bedplate-bench-'));
  const server = await startPostgres({ dataDir, temporary: true });
  try {
    await deploy(server.url);
    process.env.DATABASE_URL = server.url; // read when the client is first imported
    await work();
  } finally {
    await server.stop();
    if (existsSync(dataDir)) rmSync(dataDir, { recursive: true });
  }
}
