import { db, type Tx } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import { findColumns } from '@/lib/import/find-columns';
import type { SheetRow } from '@/lib/import/sheet-row';
import type { Dialect } from '@/lib/sheet/dialect';
import { readRows } from '@/lib/sheet/read-rows';
import { SheetRefused } from '@/lib/sheet/sheet-refused';
import { asJson, NO_COUNTS } from './run';
import { isStill, type RunKey, toStatus } from './run-state';

/** Rows written at once, and so many from the top tell which column means what. */
const BATCH = 500;
const TELLING = 200;

/** Reads the file into rows and finds its columns, which a person then confirms. Begun again, it starts anew. */
export async function readStep(key: RunKey, kind: ImportKind, dialect: Dialect, signal: AbortSignal): Promise<void> {
  const { siteId, runId } = key;
  await db.importRow.deleteMany({ where: { siteId, runId } });
  const top: SheetRow[] = [];
  let rows = 0;
  let batch: SheetRow[] = [];
  const write = async (): Promise<boolean> => {
    const part = batch;
    batch = [];
    rows += part.length;
    return db.$transaction(async (tx) => {
      if (!(await isStill(tx, key, 'reading'))) return false;
      await tx.importRow.createMany({
        data: part.map(({ line, ...row }) => ({ siteId, runId, line, cells: asJson(row) })),
      });
      await counted(tx, key, rows);
      return true;
    });
  };
  try {
    for await (const row of readRows(await fileOf(key), dialect, signal)) {
      if (top.length < TELLING) top.push(row);
      batch.push(row);
      if (batch.length === BATCH && !(await write())) return;
    }
    if (!(await write())) return;
  } catch (error) {
    if (!(error instanceof SheetRefused)) throw error;
    await toStatus(db, key, 'reading', { status: 'failed', says: error.says });
    return;
  }
  const found = findColumns(kind, top, await knownHeadings(key, kind));
  const columns = { ...found, options: {}, makePlaces: true };
  if (found.firstDataLine === null)
    await toStatus(db, key, 'reading', { status: 'failed', says: 'There is no row of data in it.' });
  else await toStatus(db, key, 'reading', { status: 'ready', columns: asJson(columns) });
}

async function fileOf({ siteId, runId }: RunKey): Promise<Uint8Array> {
  const parts = await db.importFile.findMany({ where: { siteId, runId }, orderBy: { part: 'asc' } });
  return Buffer.concat(parts.map(({ content }) => content));
}

const counted = (tx: Tx, { siteId, runId }: RunKey, rows: number) =>
  tx.importRun.update({
    where: { siteId_id: { siteId, id: runId } },
    data: { counts: asJson({ ...NO_COUNTS, rows, done: rows }) },
  });

async function knownHeadings({ siteId }: RunKey, kind: ImportKind) {
  const rows = await db.knownHeading.findMany({ where: { siteId, kind }, take: 5_000 });
  return new Map(rows.map(({ heading, field }) => [heading, field]));
}
