import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startPostgres } from '../../scripts/pg.mjs';

/** The embedded server on a folder of its own, with nothing traded for speed: what is killed here must lose no row. */
const folder = path.resolve(`.data/embedded-${process.pid}`);
const dataDir = path.join(folder, 'pg');
let server: Awaited<ReturnType<typeof startPostgres>> | null = null;

beforeAll(async () => {
  server = await startPostgres({ dataDir });
  await run(`CREATE TABLE kept (n int)`);
});
afterAll(async () => {
  await server?.stop();
  fs.rmSync(folder, { recursive: true, force: true });
});

test.each([
  ['the server', () => ['postgres']],
  ['its keeper, so that the server is nobody’s', () => ['keeper']],
  ['both, and every process of the server', () => ['keeper', 'postgres']],
])('R1 after kill -9 of %s no committed row is lost', async (_name, killed) => {
  const before = (await run('SELECT count(*)::int AS rows FROM kept')).rows[0].rows;
  await run('INSERT INTO kept VALUES (1)');
  const whole = new pg.Client(urlOf());
  whole.on('error', () => {}); // it is cut off, which is the point
  await whole.connect();
  await whole.query('BEGIN; INSERT INTO kept VALUES (2)'); // never committed
  const keeper = Number(fs.readFileSync(`${dataDir}.lock`, 'utf8'));
  const postmaster = Number(fs.readFileSync(path.join(dataDir, 'postmaster.pid'), 'utf8').split('\n')[0]);
  const children = execFileSync('ps', ['-o', 'pid=', '--ppid', String(postmaster)], { encoding: 'utf8' }).split('\n');
  if (killed().includes('keeper')) process.kill(keeper, 'SIGKILL');
  if (killed().includes('postgres')) for (const pid of [postmaster, ...children.map(Number).filter(Boolean)]) kill(pid);
  await pause(300);
  server = await startPostgres({ dataDir });
  expect((await run('SELECT count(*)::int AS rows FROM kept')).rows[0].rows).toBe(before + 1);
  expect(Number(fs.readFileSync(path.join(dataDir, 'postmaster.pid'), 'utf8').split('\n')[0])).not.toBe(postmaster);
});

test('R8 a second start on the same folder is refused, and says which process holds it', async () => {
  const holder = fs.readFileSync(`${dataDir}.lock`, 'utf8');
  await expect(startPostgres({ dataDir })).rejects.toThrow(`is in use by process ${holder}. Stop it first`);
  expect((await run('SELECT 1 AS one')).rows).toEqual([{ one: 1 }]);
});

test('S28 the password is for its owner’s eyes only', () => {
  expect(fs.statSync(`${dataDir}.password`).mode & 0o077).toBe(0);
});

test('R8 a stop leaves no process and no lock behind', async () => {
  const pid = Number(fs.readFileSync(path.join(dataDir, 'postmaster.pid'), 'utf8').split('\n')[0]);
  await server?.stop();
  server = null;
  expect(() => process.kill(pid, 0)).toThrow('ESRCH');
  expect(fs.existsSync(`${dataDir}.lock`)).toBe(false);
  expect(fs.existsSync(path.join(dataDir, 'postmaster.pid'))).toBe(false);
});

test('R1 a number left in postmaster.pid that another process has by now does not hinder the start', async () => {
  // As Postgres 17 writes it: its number, folder, start, port, no socket, address, no shared memory, state.
  const left = [process.pid, dataDir, 1_700_000_000, 5432, '', '127.0.0.1', '', 'ready'];
  fs.writeFileSync(path.join(dataDir, 'postmaster.pid'), `${left.join('\n')}\n`, { mode: 0o600 });
  server = await startPostgres({ dataDir });
  expect((await run('SELECT count(*)::int AS rows FROM kept')).rows[0].rows).toBe(3);
});

function urlOf(): string {
  if (server === null) throw new Error('no server');
  return server.url;
}

async function run(sql: string) {
  const client = new pg.Client(urlOf());
  await client.connect();
  return client.query(sql).finally(() => client.end());
}

/** One that ended meanwhile is as dead. */
function kill(pid: number) {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    expect(fs.existsSync(`/proc/${pid}`)).toBe(false);
  }
}
