import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { DELIMITERS, type Dialect, ENCODINGS } from '@/lib/sheet/dialect';
import { asJson, NO_COUNTS, type RunStatus } from '../import/run';
import { toStatus } from '../import/run-state';
import { isId } from '../is-id';
import { queueImport } from './queue-job';

/** `late`: it stands otherwise by now; `unknown`: the site has none such. */
export type SteeredImport = 'done' | 'late' | 'unknown';

/** Has the rows of the dry run written into the register. A run that failed on the way goes on. */
export const applyImport = (actor: Actor, runId: string): Promise<SteeredImport> =>
  steer(actor, runId, 'import.apply', ['checked'], () => ({ status: 'applying', changeId: randomUUID(), says: null }));

/** Goes on with what failed, or with what was cancelled while it was written: what is written already is not again. */
export const resumeImport = (actor: Actor, runId: string): Promise<SteeredImport> =>
  steer(actor, runId, 'import.apply', ['failed', 'cancelled'], ({ changeId }) =>
    changeId === null ? null : { status: 'applying', says: null },
  );

/** Takes back all that it wrote; also of one that was cancelled or failed half way. */
export const undoImport = (actor: Actor, runId: string): Promise<SteeredImport> =>
  steer(actor, runId, 'import.undo', ['applied', 'cancelled', 'failed'], ({ changeId }) =>
    changeId === null ? null : { status: 'undoing', says: null },
  );

/** Stops it. What is written stays, is counted, and can be undone. */
export const cancelImport = (actor: Actor, runId: string): Promise<SteeredImport> =>
  steer(actor, runId, 'import.cancel', ['reading', 'ready', 'checking', 'checked', 'applying'], () => ({
    status: 'cancelled',
    says: null,
  }));

/** Has the file read again as a person says it is written. */
export const readAnew = (
  actor: Actor,
  runId: string,
  { encoding, delimiter, decimal, sheet }: Partial<Pick<Dialect, 'encoding' | 'delimiter' | 'decimal' | 'sheet'>>,
): Promise<SteeredImport> =>
  steer(actor, runId, 'import.read', ['ready', 'checked', 'failed', 'cancelled'], (run) => {
    const found = run.dialect as unknown as Dialect;
    if (run.changeId !== null) return null;
    const isText = found.format === 'csv';
    const told: Dialect = {
      ...found,
      ...(isText && ENCODINGS.some((one) => one === encoding) && { encoding: encoding ?? null }),
      ...(isText && DELIMITERS.some((one) => one === delimiter) && { delimiter: delimiter ?? null }),
      ...((decimal === '.' || decimal === ',') && { decimal }),
      ...(!isText && sheet != null && found.sheets.includes(sheet) && { sheet }),
    };
    return { status: 'reading', dialect: asJson(told), columns: {}, counts: asJson(NO_COUNTS), says: null };
  });

type Run = { status: string; changeId: string | null; dialect: Prisma.JsonValue };

async function steer(
  actor: Actor,
  runId: string,
  action: string,
  from: readonly RunStatus[],
  to: (run: Run) => ({ status: RunStatus } & Prisma.ImportRunUpdateManyMutationInput) | null,
): Promise<SteeredImport> {
  must(actor, 'import.run');
  const { siteId } = actor;
  if (!isId(runId)) return 'unknown';
  return db.$transaction(async (tx) => {
    const run = await tx.importRun.findUnique({
      where: { siteId_id: { siteId, id: runId } },
      select: { status: true, changeId: true, dialect: true },
    });
    if (run === null) return 'unknown';
    const status = from.find((one) => one === run.status);
    const change = status === undefined ? null : to(run);
    if (status === undefined || change === null) return 'late';
    if (!(await toStatus(tx, { siteId, runId }, status, change))) return 'late';
    await record(tx, actor, { action, thing: 'import', thingId: runId });
    if (change.status !== 'cancelled') await queueImport(tx, actor, runId);
    return 'done';
  });
}
