import { randomUUID } from 'node:crypto';
import { type Actor, may } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import type { Dialect } from '@/lib/sheet/dialect';
import { applyStep } from './apply-step';
import { checkStep } from './check-step';
import { readStep } from './read-step';
import { isAtWork, type RunColumns } from './run';
import { type RunKey, toStatus } from './run-state';
import { undoImportStep } from './undo-import-step';

/** Whose work it is: as the queue hands it on. */
export interface ImportWork extends RunKey {
  userId: string;
}

/** Does what the run stands for now: read, look, write or put back. Nothing when it waits for a person. */
export async function workOnImport({ siteId, runId, userId }: ImportWork, signal: AbortSignal): Promise<void> {
  const key = { siteId, runId };
  const run = await db.importRun.findUnique({ where: { siteId_id: { siteId, id: runId } } });
  if (run === null || !isAtWork(run.status)) return;
  const by = await actorOf(siteId, userId);
  if (by === null) {
    const says = 'Who asked for it may not import any more.';
    await toStatus(db, key, run.status, { status: run.status === 'undoing' ? 'applied' : 'failed', says });
    return;
  }
  const kind = run.kind as ImportKind;
  const dialect = run.dialect as unknown as Dialect;
  const columns = run.columns as unknown as RunColumns;
  switch (run.status) {
    case 'reading':
      return readStep(key, kind, dialect, signal);
    case 'checking':
      return checkStep(key, kind, dialect, columns, signal);
    case 'applying':
      return applyStep(key, kind, dialect, columns, { ...by, changeId: String(run.changeId) }, signal);
    case 'undoing':
      return undoImportStep(key, { ...by, changeId: randomUUID() }, String(run.changeId));
  }
}

/** Marks a run that could not be worked on: it failed at every try. What is written of it stays marked as written. */
export async function giveUpImport({ siteId, runId }: ImportWork, reference: string): Promise<void> {
  const run = await db.importRun.findUnique({ where: { siteId_id: { siteId, id: runId } } });
  if (run === null || !isAtWork(run.status)) return;
  const says = `Something failed here; its reference is ${reference}.`;
  await toStatus(db, { siteId, runId }, run.status, { status: run.status === 'undoing' ? 'applied' : 'failed', says });
}

async function actorOf(siteId: string, userId: string): Promise<Actor | null> {
  const user = await db.user.findFirst({
    where: { id: userId, siteId, retiredAt: null },
    select: { role: true, name: true },
  });
  if (user === null) return null;
  const actor = { userId, siteId, role: user.role as Actor['role'], name: user.name };
  return may(actor, 'import.run') ? actor : null;
}
