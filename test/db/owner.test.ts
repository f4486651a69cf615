import pg from 'pg';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { deploy } from '../../scripts/migrate.mjs';
import { startPostgres } from '../../scripts/pg.mjs';

/** A server of its own: a role belongs to the whole server, and the other tests' has made ours already. */
let server: Awaited<ReturnType<typeof startPostgres>>;
let owner: string;
beforeAll(async () => {
  server = await startPostgres({
    dataDir: `${import.meta.dirname}/../../.data/owner-${process.pid}`,
    temporary: true,
  });
  await run(server.url, `CREATE ROLE plant LOGIN CREATEROLE PASSWORD 'plant'`);
  await run(server.url, 'CREATE DATABASE plant OWNER plant');
  const url = new URL(server.url);
  [url.username, url.password, url.pathname] = ['plant', 'plant', '/plant'];
  owner = url.href;
});
afterAll(() => server.stop());

test('an owner who is no superuser can migrate, and the program takes its smaller role on', async () => {
  expect((await deploy(owner)).length).toBeGreaterThan(1);
  const asProgram = { connectionString: owner, options: '-c role=bedplate_app' };
  expect((await run(asProgram, 'SELECT current_user AS who')).rows).toEqual([{ who: 'bedplate_app' }]);
  expect((await run(asProgram, 'SELECT count(*)::int AS sets FROM pump_set')).rows).toEqual([{ sets: 0 }]);
  await expect(run(asProgram, 'DROP TABLE pump_set')).rejects.toThrow(/must be owner/);
});

test('R9 migrations run once, however many start at once, and never twice', async () => {
  expect((await Promise.all([deploy(owner), deploy(owner), deploy(owner)])).flat()).toEqual([]);
  await run(server.url, 'CREATE DATABASE fresh OWNER plant');
  const fresh = owner.replace(/\/plant$/, '/fresh');
  const done = await Promise.all([deploy(fresh), deploy(fresh), deploy(fresh)]);
  expect(done.filter((names) => names.length > 0)).toHaveLength(1);
});

test('R9 a database newer than the program is not served', async () => {
  await run(
    owner,
    `INSERT INTO _prisma_migrations (id, checksum, migration_name) VALUES ('x', 'x', '29990101000000_later')`,
  );
  await expect(deploy(owner)).rejects.toThrow(/newer than this program: it has 29990101000000_later/);
});

async function run(how: string | pg.ClientConfig, sql: string) {
  const client = new pg.Client(how);
  await client.connect();
  return client.query(sql).finally(() => client.end());
}
