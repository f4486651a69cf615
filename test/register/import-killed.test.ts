import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { applyImport, undoImport } from '@/lib/register/commands/steer-import';
import { checkedFile, countsOf, runOf, work } from './import';
import { someone } from './plant';

const ROWS = 900;
const LIST = `Tag,Held by,Service,Motor number,Frame\n${Array.from({ length: ROWS }, (_, i) => `K-${i},foot,Rinse ${i},KM-${i},184T`).join('\n')}\n`;

/** A process of its own at work on the import, as a server would be. */
function worker(actor: Actor, runId: string): ChildProcess {
  return spawn(
    process.execPath,
    [
      '--conditions=react-server',
      '--import',
      'tsx',
      `${import.meta.dirname}/killed-import.ts`,
      actor.siteId,
      runId,
      actor.userId,
    ],
    { env: { ...process.env, DATABASE_URL: process.env.DATABASE_URL }, stdio: 'ignore' },
  );
}

const standing = async ({ siteId }: Actor) => [
  await db.pumpSet.count({ where: { siteId, retiredAt: null } }),
  await db.motor.count({ where: { siteId, place: 'in-set' } }),
];

test('R1 kill -9 in the middle of an import leaves whole batches; the job begun again writes the rest, and each row once', async () => {
  const actor = await someone();
  const runId = await checkedFile(actor, 'sets', LIST);
  await applyImport(actor, runId);
  const child = worker(actor, runId);
  const ended = once(child, 'exit');
  await expect
    .poll(() => countsOf(actor, runId).then(({ applied }) => applied), { timeout: 120_000, interval: 20 })
    .toBeGreaterThan(0);
  child.kill('SIGKILL');
  expect((await ended)[1]).toBe('SIGKILL');
  // Its connection is cut off: what it had begun is given up by the database.
  await expect
    .poll(
      async () => {
        const [{ busy }] = (await db.$queryRaw`
          SELECT count(*)::int AS busy FROM pg_stat_activity
          WHERE datname = current_database() AND pid <> pg_backend_pid() AND state LIKE 'idle in transaction%'`) as [
          { busy: number },
        ];
        return busy;
      },
      { timeout: 120_000 },
    )
    .toBe(0);
  const { applied } = await countsOf(actor, runId);
  expect(applied % 100).toBe(0);
  expect(applied).toBeLessThan(ROWS);
  expect(await standing(actor)).toEqual([applied, applied]);
  expect((await runOf(actor, runId)).status).toBe('applying');

  await work(actor, runId);
  expect((await runOf(actor, runId)).status).toBe('applied');
  expect(await standing(actor)).toEqual([ROWS, ROWS]);
  const made = await db.auditEntry.groupBy({
    by: ['thing'],
    where: { siteId: actor.siteId, action: { in: ['set.register', 'motor.register'] } },
    _count: true,
  });
  expect(made.map(({ thing, _count }) => [thing, _count]).sort()).toEqual([
    ['motor', ROWS],
    ['set', ROWS],
  ]);
});

test('R1 kill -9 in the middle of taking an import back leaves all of it; begun again, none of it', async () => {
  const actor = await someone();
  const runId = await checkedFile(actor, 'sets', LIST);
  await applyImport(actor, runId);
  await work(actor, runId);
  await undoImport(actor, runId);
  const child = worker(actor, runId);
  const ended = once(child, 'exit');
  // Locked by the job at work, and not yet given back.
  await expect
    .poll(
      async () => {
        const rows = await db.$queryRaw<unknown[]>`
          SELECT 1 FROM pg_locks AS l JOIN pg_class AS c ON c.oid = l.relation
          WHERE c.relname = 'pump_set' AND l.mode = 'RowExclusiveLock' AND l.database = (SELECT oid FROM pg_database WHERE datname = current_database())`;
        return rows.length;
      },
      { timeout: 120_000, interval: 5 },
    )
    .toBeGreaterThan(0);
  child.kill('SIGKILL');
  await ended;
  await expect.poll(() => standing(actor), { timeout: 120_000 }).toEqual([ROWS, ROWS]);
  expect((await runOf(actor, runId)).status).toBe('undoing');
  await work(actor, runId);
  expect(await standing(actor)).toEqual([0, 0]);
});
