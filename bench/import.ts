// npm run bench:import: a sheet of 10 000 sets with their motors through every step of an import, on a database of its own.
import { randomUUID } from 'node:crypto';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { RunColumns, RunCounts } from '@/lib/register/import/run';
import { onOwnDatabase } from './on-own-database';

const ROWS = Number(process.argv[2] ?? 10_000);
const HEAD =
  'Tag;Area;Service;Held by;Supply volts;Supply hertz;Supply phases;Motor number;Maker;Serial;Frame;Power kW;rpm;Volts;Hz;Amps;IP;Store';
const row = (n: number, kw: string) =>
  `T-${n};Hall ${n % 40};Rinse ${n};foot;400;50;3;TM-${n};Fernholt;F${n * 7919};132S;${kw};1455;400;50;10,9;IP55;`;

await onOwnDatabase(bench);

async function bench(): Promise<void> {
  const { db } = await import('@/lib/db/client');
  const { registerSite } = await import('@/lib/register/commands/register-site');
  const { startImport } = await import('@/lib/register/commands/start-import');
  const { confirmImport } = await import('@/lib/register/commands/confirm-import');
  const { applyImport, undoImport } = await import('@/lib/register/commands/steer-import');
  const { workOnImport } = await import('@/lib/register/import/work-on-import');

  const siteId = await registerSite({ name: 'Bench', timezone: 'UTC', settings: defaultSettings });
  const userId = randomUUID();
  await db.user.create({
    data: { id: userId, siteId, role: 'planner', name: 'Ida Fenn', email: `${userId}@example.com` },
  });
  const actor = { siteId, userId, role: 'planner' as const, name: 'Ida Fenn' };
  let peak = 0;
  const watch = setInterval(() => {
    peak = Math.max(peak, process.memoryUsage().rss);
  }, 20);
  const runOf = (id: string) => db.importRun.findUniqueOrThrow({ where: { siteId_id: { siteId, id } } });
  const never = new AbortController().signal;
  const base = process.memoryUsage().rss;
  const timed = async (what: string, work: () => Promise<unknown>): Promise<number> => {
    peak = 0;
    const start = performance.now();
    await work();
    const ms = performance.now() - start;
    const grown = (Math.max(peak, process.memoryUsage().rss) - base) / 1024 / 1024;
    const each = `${(ms / ROWS).toFixed(2)} ms a row; at most ${grown.toFixed(0)} MB more than at the start`;
    console.log(`${what.padEnd(40)} ${(ms / 1000).toFixed(1).padStart(7)} s   ${each}`);
    return ms;
  };
  const whole = async (name: string, kw: string): Promise<[string, number]> => {
    const text = `${HEAD}\r\n${Array.from({ length: ROWS }, (_, i) => row(i, kw)).join('\r\n')}\r\n`;
    const bytes = Buffer.from(text, 'latin1');
    console.log(`\n${name}: ${ROWS} rows, ${(bytes.length / 1e6).toFixed(1)} MB`);
    const started = await startImport(actor, { fileName: 'bench.csv', bytes, kind: 'sets' });
    const { runId } = started;
    const work = () => workOnImport({ siteId, runId, userId }, never);
    const read = await timed('  read into rows, columns found', work);
    const { columns } = (await runOf(runId)).columns as unknown as RunColumns;
    const confirmed = await confirmImport(actor, runId, { columns, options: {}, makePlaces: true });
    if (confirmed.outcome !== 'saved') throw new Error(JSON.stringify(confirmed));
    const looked = await timed('  every row looked at', work);
    await applyImport(actor, runId);
    const written = await timed('  written into the register', work);
    const { counts, status, says } = await runOf(runId);
    console.log(`  ${status} ${says ?? ''} ${JSON.stringify(counts as unknown as RunCounts)}`);
    return [runId, read + looked + written];
  };
  const [, fresh] = await whole('All new', '5,5');
  const [, same] = await whole('The same again', '5,5');
  const [changed] = await whole('One figure of each changed', '5,6');
  console.log(`\nThe same again over all new: ${(same / fresh).toFixed(2)} ×`);
  await undoImport(actor, changed);
  await timed('Taken back whole', () => workOnImport({ siteId, runId: changed, userId }, never));
  console.log(`  ${(await runOf(changed)).status} ${(await runOf(changed)).says ?? ''}`);
  clearInterval(watch);
  await db.$disconnect();
}
