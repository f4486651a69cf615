import { createHash } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import type { Dialect } from '@/lib/sheet/dialect';
import { findDialect } from '@/lib/sheet/find-dialect';
import { SheetRefused } from '@/lib/sheet/sheet-refused';
import { asJson, NO_COUNTS } from '../import/run';
import { queueImport } from './queue-job';

export type StartedImport = { outcome: 'saved'; runId: string } | { outcome: 'refused'; runId: string; says: string };

/** One part of a kept file. */
const PART = 1024 * 1024;
const LONGEST_NAME = 200;

/** Keeps a file and has it read. Of one that by its bytes can be no sheet nothing is kept but that it came, and why not. */
export async function startImport(
  actor: Actor,
  { fileName, bytes, kind }: { fileName: string; bytes: Uint8Array; kind: ImportKind },
): Promise<StartedImport> {
  must(actor, 'import.run');
  const { siteId, userId } = actor;
  const dialect = await dialectOf(bytes);
  const refusal = typeof dialect === 'string' ? dialect : null;
  const runId = await db.$transaction(
    async (tx) => {
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
      if (refusal === null) await queueImport(tx, actor, run.id);
      return run.id;
    },
    { timeout: 60_000 },
  );
  return refusal === null ? { outcome: 'saved', runId } : { outcome: 'refused', runId, says: refusal };
}

/** How the file is written, or why it is none. */
async function dialectOf(bytes: Uint8Array): Promise<Dialect | string> {
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
