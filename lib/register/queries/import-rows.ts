import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Change } from '@/lib/import/changes-between';
import type { CellProblem } from '@/lib/import/row-draft';
import type { SheetRow } from '@/lib/import/sheet-row';
import { isId } from '../is-id';

/** What a row of the dry run came to; passed: it is none of data. */
export const ROW_OUTCOMES = ['new', 'changed', 'same', 'refused', 'applied', 'passed'] as const;
export type RowOutcome = (typeof ROW_OUTCOMES)[number];

export interface ImportRowLine {
  line: number;
  outcome: RowOutcome;
  /** The tag or the number; null: the row has none. */
  key: string | null;
  changes: Change[];
  /** Of a refused row why; of another what is worth knowing. */
  problems: CellProblem[];
  /** What stands in its first cells, for a row that has no key. */
  begins: string;
}

/** The rows of an import, all or those of one outcome, a page at a time in the order of the file. */
export async function importRows(
  actor: Actor,
  runId: string,
  outcome: RowOutcome | null,
  { page, perPage }: { page: number; perPage: number },
): Promise<{ rows: ImportRowLine[]; all: number }> {
  must(actor, 'import.run');
  if (!isId(runId)) return { rows: [], all: 0 };
  const where = {
    siteId: actor.siteId,
    runId,
    ...(outcome !== null && { outcome: outcome === 'passed' ? null : outcome }),
  };
  const [rows, all] = await Promise.all([
    db.importRow.findMany({
      where,
      orderBy: { line: 'asc' },
      skip: (page - 1) * perPage,
      take: Math.min(perPage, 500),
    }),
    db.importRow.count({ where }),
  ]);
  return { all, rows: rows.map(lineOf) };
}

/** The same behind a line of the file. */
export async function importRowsAfter(
  actor: Actor,
  runId: string,
  outcome: RowOutcome | null,
  after: number,
  take: number,
): Promise<ImportRowLine[]> {
  must(actor, 'import.run');
  if (!isId(runId)) return [];
  const of = outcome !== null && { outcome: outcome === 'passed' ? null : outcome };
  const rows = await db.importRow.findMany({
    where: { siteId: actor.siteId, runId, line: { gt: Math.min(Math.max(0, Math.trunc(after)), MOST_LINE) }, ...of },
    orderBy: { line: 'asc' },
    take: Math.min(take, 501),
  });
  return rows.map(lineOf);
}

const MOST_LINE = 2_000_000_000;

const lineOf = (row: {
  line: number;
  outcome: string | null;
  draft: unknown;
  changes: unknown;
  problems: unknown;
  cells: unknown;
}): ImportRowLine => ({
  line: row.line,
  outcome: (row.outcome ?? 'passed') as RowOutcome,
  key: (row.draft as { key: string | null } | null)?.key ?? null,
  changes: row.changes as Change[],
  problems: row.problems as CellProblem[],
  begins: (row.cells as SheetRow).cells
    .filter((cell) => cell.trim() !== '')
    .slice(0, 3)
    .join(', '),
});

/** As many refused rows as a file is given back with: all that a file may have. */
const MOST_REFUSED = 50_000;

/** The refused rows as they came, each with why. */
export async function refusedRows(actor: Actor, runId: string): Promise<{ row: SheetRow; problems: CellProblem[] }[]> {
  must(actor, 'import.run');
  if (!isId(runId)) return [];
  const rows = await db.importRow.findMany({
    where: { siteId: actor.siteId, runId, outcome: 'refused' },
    orderBy: { line: 'asc' },
    take: MOST_REFUSED,
    select: { line: true, cells: true, problems: true },
  });
  return rows.map(({ line, cells, problems }) => ({
    row: { ...(cells as Omit<SheetRow, 'line'> & object), line } as SheetRow,
    problems: problems as unknown as CellProblem[],
  }));
}
