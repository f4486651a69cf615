import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import type { Dialect } from '@/lib/sheet/dialect';
import type { RunColumns, RunCounts, RunStatus } from '../import/run';
import { isId } from '../is-id';

export interface ImportLine {
  runId: string;
  fileName: string;
  kind: ImportKind;
  status: RunStatus;
  counts: RunCounts;
  by: string;
  at: Date;
}

/** As many as a page shows. */
const MOST = 50;

/** The site's imports, the latest first. */
export async function imports(actor: Actor): Promise<ImportLine[]> {
  must(actor, 'import.run');
  const rows = await db.importRun.findMany({
    where: { siteId: actor.siteId },
    orderBy: { at: 'desc' },
    take: MOST,
    select: { ...LINE, by: { select: { name: true } } },
  });
  return rows.map(lineOf);
}

const LINE = { id: true, fileName: true, kind: true, status: true, counts: true, at: true } as const;

const lineOf = (row: {
  id: string;
  fileName: string;
  kind: string | null;
  status: string;
  counts: unknown;
  at: Date;
  by: { name: string };
}): ImportLine => ({
  ...{ runId: row.id, fileName: row.fileName, kind: row.kind as ImportKind, status: row.status as RunStatus },
  ...{ counts: row.counts as RunCounts, by: row.by.name, at: row.at },
});

export interface OneImport extends ImportLine {
  dialect: Dialect;
  /** Null until the file is read. */
  columns: RunColumns | null;
  says: string | null;
  /** Null until it is applied. */
  changeId: string | null;
  appliedAt: Date | null;
  /** The same file was applied before: when, and as which import. */
  before: { runId: string; at: Date } | null;
}

/** One import of the site; null when it has none such. */
export async function importById(actor: Actor, runId: string): Promise<OneImport | null> {
  must(actor, 'import.run');
  const { siteId } = actor;
  if (!isId(runId)) return null;
  const row = await db.importRun.findUnique({
    where: { siteId_id: { siteId, id: runId } },
    include: { by: { select: { name: true } } },
  });
  if (row === null) return null;
  const before = await db.importRun.findFirst({
    where: { siteId, fileSha256: row.fileSha256, kind: row.kind, status: 'applied', at: { lt: row.at } },
    orderBy: { at: 'desc' },
    select: { id: true, appliedAt: true, at: true },
  });
  const columns = row.columns as unknown as RunColumns;
  return {
    ...lineOf(row),
    dialect: row.dialect as unknown as Dialect,
    columns: columns.columns === undefined ? null : columns,
    ...{ says: row.says, changeId: row.changeId, appliedAt: row.appliedAt },
    before: before && { runId: before.id, at: before.appliedAt ?? before.at },
  };
}
