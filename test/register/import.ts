import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import { type ConfirmedColumns, confirmImport } from '@/lib/register/commands/confirm-import';
import { startImport } from '@/lib/register/commands/start-import';
import { applyImport } from '@/lib/register/commands/steer-import';
import type { RunColumns, RunCounts } from '@/lib/register/import/run';
import { workOnImport } from '@/lib/register/import/work-on-import';

const never = new AbortController().signal;

/** Does what the queue would have done for a run. */
export const work = (actor: Actor, runId: string) =>
  workOnImport({ siteId: actor.siteId, runId, userId: actor.userId }, never);

export const runOf = (actor: Actor, runId: string) =>
  db.importRun.findUniqueOrThrow({ where: { siteId_id: { siteId: actor.siteId, id: runId } } });

export const countsOf = async (actor: Actor, runId: string) =>
  (await runOf(actor, runId)).counts as unknown as RunCounts;

/** A file that has been read and waits for a person's word on its columns. */
export async function readFile(actor: Actor, kind: ImportKind, text: string | Uint8Array): Promise<string> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const started = await startImport(actor, { fileName: 'list.csv', bytes, kind });
  if (started.outcome !== 'saved') throw new Error(started.says);
  await work(actor, started.runId);
  return started.runId;
}

/** The same with the columns taken as they were found and every row looked at. */
export async function checkedFile(
  actor: Actor,
  kind: ImportKind,
  text: string | Uint8Array,
  more: Partial<ConfirmedColumns> = {},
): Promise<string> {
  const runId = await readFile(actor, kind, text);
  const { columns } = (await runOf(actor, runId)).columns as unknown as RunColumns;
  const done = await confirmImport(actor, runId, { columns, options: {}, makePlaces: true, ...more });
  if (done.outcome !== 'saved') throw new Error(JSON.stringify([done, (await runOf(actor, runId)).says]));
  await work(actor, runId);
  return runId;
}

/** The same with what it says written into the register. */
export async function appliedFile(actor: Actor, kind: ImportKind, text: string | Uint8Array): Promise<string> {
  const runId = await checkedFile(actor, kind, text);
  if ((await applyImport(actor, runId)) !== 'done') throw new Error('not applied');
  await work(actor, runId);
  return runId;
}

/** What became of each row: line, outcome, and what is said of it. */
export async function outcomes(actor: Actor, runId: string): Promise<[number, string | null, string][]> {
  const rows = await db.importRow.findMany({ where: { siteId: actor.siteId, runId }, orderBy: { line: 'asc' } });
  return rows.map(({ line, outcome, problems }) => [
    line,
    outcome,
    (problems as unknown as { says: string }[]).map(({ says }) => says).join('; '),
  ]);
}
