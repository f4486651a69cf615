import { createHash } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import { findDialect } from '@/lib/sheet/find-dialect';
import { SheetRefused } from '@/lib/sheet/sheet-refused';
import { asJson, NO_COUNTS } from '../import/run';
import { queueImport } from './queue-job';

export type StartedImport = { outcome: 'saved'; runId: string } | { outcome: 'refused'; says: string };

/** One part of a kept file. */
const PART = 1024 * 1024;
const LONGEST_NAME = 200;

/** Keeps a file and has it read. Told by its bytes that it can be none of ours, nothing is kept. */
export async function startImport(
  actor: Actor,
  { fileName, bytes, kind }: { fileName: string; bytes: Uint8Array; kind: ImportKind },
): Promise<StartedImport> {
  must(actor, 'import.run');
  const { siteId, userId } = actor;
  if (bytes.length === 0) return { outcome: 'refused', says: 'The file is empty.' };
  let dialect: Awaited<ReturnType<typeof findDialect>>;
  try {
    dialect = await findDialect(bytes);
  } catch (error) {
    if (error instanceof SheetRefused) return { outcome: 'refused', says: error.says };
    throw error;
  }
  const runId = await db.$transaction(
    async (tx) => {
      const run = await tx.importRun.create({
        data: {
          ...{ siteId, byId: userId, kind, status: 'reading' },
          fileName: shortName(fileName),
          fileSha256: createHash('sha256').update(bytes).digest('hex'),
          dialect: asJson(dialect),
          counts: asJson(NO_COUNTS),
        },
        select: { id: true },
      });
      for (let i = 0; i * PART < bytes.length; i += 1)
        await tx.importFile.create({
          data: { siteId, runId: run.id, part: i, content: new Uint8Array(bytes.subarray(i * PART, (i + 1) * PART)) },
        });
      const after = { fileName: shortName(fileName), kind };
      await record(tx, actor, { action: 'import.start', thing: 'import', thingId: run.id, after });
      await queueImport(tx, actor, run.id);
      return run.id;
    },
    { timeout: 60_000 },
  );
  return { outcome: 'saved', runId };
}

/** What a file is called, on one line; the folder that some browsers send is left out. */
const shortName = (name: string) =>
  (name.split(/[\\/]/).at(-1) ?? '')
    .replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, ' ')
    .trim()
    .slice(0, LONGEST_NAME) || 'without a name';
