import { createHash } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import type { Dialect } from '@/lib/sheet/dialect';
import { findDialect } from '@/lib/sheet/find-dialect';
import { SheetRefused } from '@/lib/sheet/sheet-refused';
import { asJson, NO_COUNTS } from '../import/run';
import { MOST_AT_ONCE } from './parts';
import { queueImport } from './queue-job';

export type StartedImport =
  | { outcome: 'saved'; runId: string; fileName: string }
  | { outcome: 'refused'; runId: string; says: string };

/** One part of a kept file. */
const PART = 1024 * 1024;
const LONGEST_NAME = 200;

export interface SentFile {
  fileName: string;
  bytes: Uint8Array;
  kind: ImportKind;
}

/** Keeps a file and has it read. Of one that by its bytes can be no sheet nothing is kept but that it came, and why not. */
export async function startImport(actor: Actor, file: SentFile): Promise<StartedImport> {
  must(actor, 'import.run');
  const dialect = await dialectOf(file.bytes);
  return db.$transaction((tx) => startImportIn(tx, actor, file, dialect), { timeout: MOST_AT_ONCE });
}

/** The same in a transaction that does more besides; how the file is written was found before. */
export async function startImportIn(
  tx: Tx,
  actor: Actor,
  { fileName, bytes, kind }: SentFile,
  dialect: Dialect | string,
): Promise<StartedImport> {
  must(actor, 'import.run');
  const { siteId, userId } = actor;
  const refusal = typeof dialect === 'string' ? dialect : null;
  const run = await tx.importRun.create({
    data: {
      ...{ siteId, byId: userId, kind, status: refusal === null ? 'reading' : 'failed', says: refusal },
      fileName: shortName(fileName),
      fileSha256: createHash('sha256').update(bytes).digest('hex'),
      dialect: typeof dialect === 'string' ? {} : asJson(dialect),
      counts: asJson(NO_COUNTS),
    },
    select: { id: true },
  });
  for (let i = 0; refusal === null && i * PART < bytes.length; i += 1)
    await tx.importFile.create({
      data: { siteId, runId: run.id, part: i, content: new Uint8Array(bytes.subarray(i * PART, (i + 1) * PART)) },
    });
  const after = { fileName: shortName(fileName), kind };
  await record(tx, actor, { action: 'import.start', thing: 'import', thingId: run.id, after });
  if (refusal !== null) return { outcome: 'refused', runId: run.id, says: refusal };
  await queueImport(tx, actor, run.id);
  return { outcome: 'saved', runId: run.id, fileName: after.fileName };
}

/** How the file is written, or why it is none. */
export async function dialectOf(bytes: Uint8Array): Promise<Dialect | string> {
  if (bytes.length === 0) return 'The file is empty.';
  try {
    return await findDialect(bytes);
  } catch (error) {
    if (error instanceof SheetRefused) return error.says;
    throw error;
  }
}

/** What a file is called, on one line; the folder that some browsers send is left out. */
const shortName = (name: string) =>
  (name.split(/[\\/]/).at(-1) ?? '')
    .replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, ' ')
    .trim()
    .slice(0, LONGEST_NAME) || 'without a name';
