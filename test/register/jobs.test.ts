import { afterEach, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { type Jobs, startJobs } from '@/lib/jobs/start-jobs';
import { confirmImport } from '@/lib/register/commands/confirm-import';
import { startImport } from '@/lib/register/commands/start-import';
import { applyImport } from '@/lib/register/commands/steer-import';
import type { RunColumns } from '@/lib/register/import/run';
import { freeJobs } from '../../scripts/jobs-schema.mjs';
import { asOwner } from '../db/as-owner';
import { countsOf, runOf } from './import';
import { someone } from './plant';

const LIST = new TextEncoder().encode('Tag,Held by,Service\nJ-1,foot,Whey\nJ-2,foot,Brine\n');
const url = String(process.env.DATABASE_URL);
let jobs: Jobs | null = null;
afterEach(async () => {
  await jobs?.stop();
  jobs = null;
});

const statusOf = async (actor: Awaited<ReturnType<typeof someone>>, runId: string) =>
  (await runOf(actor, runId)).status;
const settled = { timeout: 120_000, interval: 50 };

test('what is queued is worked on: read, looked at, written, while nobody waits', async () => {
  const actor = await someone();
  const started = await startImport(actor, { fileName: 'list.csv', bytes: LIST, kind: 'sets' });
  jobs = await startJobs(url);
  const { runId } = started;
  await expect.poll(() => statusOf(actor, runId), settled).toBe('ready');
  const { columns } = (await runOf(actor, runId)).columns as unknown as RunColumns;
  await confirmImport(actor, runId, { columns, options: {}, makePlaces: true });
  await expect.poll(() => statusOf(actor, runId), settled).toBe('checked');
  await applyImport(actor, runId);
  await expect.poll(() => statusOf(actor, runId), settled).toBe('applied');
  expect(await countsOf(actor, runId)).toMatchObject({ applied: 2 });
  await jobs.stop();
  jobs = null;
  expect((await asOwner('SELECT count(*)::int AS left FROM graphile_worker._private_jobs')).rows).toEqual([
    { left: 0 },
  ]);
});

test('R1 a job that a killed process holds is given back at the next start, and done', async () => {
  const actor = await someone();
  const { runId } = await startImport(actor, { fileName: 'list.csv', bytes: LIST, kind: 'sets' });
  await asOwner(`UPDATE graphile_worker._private_jobs SET locked_at = now(), locked_by = 'a process that is dead'`);
  jobs = await startJobs(url);
  await new Promise((resolve) => setTimeout(resolve, 2_500));
  expect(await statusOf(actor, runId)).toBe('reading');
  await jobs.stop();
  await freeJobs(url);
  jobs = await startJobs(url);
  await expect.poll(() => statusOf(actor, runId), settled).toBe('ready');
});

test('R8 told to stop, it ends in time and leaves the job to be begun again', async () => {
  const actor = await someone();
  const many = `Tag,Held by\n${Array.from({ length: 4_000 }, (_, i) => `S-${i},foot`).join('\n')}\n`;
  jobs = await startJobs(url);
  const { runId } = await startImport(actor, {
    ...{ fileName: 'many.csv', bytes: new TextEncoder().encode(many), kind: 'sets' as const },
  });
  await expect.poll(() => statusOf(actor, runId), settled).toBe('ready');
  const { columns } = (await runOf(actor, runId)).columns as unknown as RunColumns;
  await confirmImport(actor, runId, { columns, options: {}, makePlaces: true });
  await expect.poll(() => countsOf(actor, runId).then(({ done }) => done), settled).toBeGreaterThan(0);
  await jobs.stop();
  const left = await db.$queryRaw<{ left: number }[]>`
    SELECT count(*)::int AS left FROM graphile_worker._private_jobs WHERE locked_at IS NULL`;
  expect(await statusOf(actor, runId)).toBe('checking');
  expect(left).toEqual([{ left: 1 }]);
  jobs = await startJobs(url);
  await expect.poll(() => statusOf(actor, runId), { ...settled, timeout: 120_000 }).toBe('checked');
});
