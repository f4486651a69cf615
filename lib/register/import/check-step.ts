import { setImmediate as pause } from 'node:timers/promises';
import { db, type Tx } from '@/lib/db/client';
import { Prisma } from '@/lib/db/generated/client';
import { type Draft, draftOf } from '@/lib/import/draft';
import type { ImportKind } from '@/lib/import/field';
import { planner, type RowPlan } from '@/lib/import/plan';
import type { SheetRow } from '@/lib/import/sheet-row';
import type { Dialect } from '@/lib/sheet/dialect';
import { existingOf, type KeptFor, keptFor } from './kept-for';
import { placeNames, placeProblems } from './place-names';
import { asJson, asList, NO_COUNTS, type RunColumns, type RunCounts } from './run';
import { isStill, type RunKey, toStatus } from './run-state';

/** Rows looked at in one transaction. */
const BATCH = 250;
/** Rows read before pages, which the same process answers, have their turn. */
const AT_ONCE = 20;

/**
 * The dry run: what each row would do to the register, written beside it. It changes nothing of the register. The rows
 * are planned in their order, since a tag that comes twice is told by the first; begun again, it starts anew.
 */
export async function checkStep(
  key: RunKey,
  kind: ImportKind,
  dialect: Dialect,
  columns: RunColumns,
  signal: AbortSignal,
): Promise<void> {
  const { siteId, runId } = key;
  const rows = await db.importRow.count({ where: { siteId, runId } });
  let counts: RunCounts = { ...NO_COUNTS, rows };
  const plans = planner(kind);
  const places = await placeNames(db, siteId);
  for (let after = 0; ; ) {
    signal.throwIfAborted();
    const part = await db.importRow.findMany({
      where: { siteId, runId, line: { gt: after } },
      orderBy: { line: 'asc' },
      take: BATCH,
      select: { line: true, cells: true },
    });
    const last = part.at(-1);
    if (last === undefined) break;
    after = last.line;
    const drafts: { line: number; draft: Draft | null }[] = [];
    for (const { line, cells } of part) {
      drafts.push({ line, draft: draftOfRow(kind, rowOf(line, cells), columns, dialect) });
      if (drafts.length % AT_ONCE === 0) await pause();
    }
    const told = drafts.flatMap(({ draft }) => draft ?? []);
    const kept = await keptFor(db, siteId, told);
    const looked = drafts.map(({ line, draft }): Looked => {
      if (draft === null) return { line, draft, plan: ABOVE, kept: NOTHING };
      const held = kept[told.indexOf(draft)] ?? NOTHING;
      const plan = plans.plan(draft, existingOf(held));
      const motor = held.motor?.kept ?? null;
      const wrong =
        plan.outcome === 'refused' ? [] : placeProblems(kind, draft, plan, places, columns.makePlaces, motor);
      return {
        ...{ line, draft, kept: held },
        plan: wrong.length === 0 ? plan : { ...plan, outcome: 'refused', changes: [], problems: wrong },
      };
    });
    counts = looked.reduce(countedWith, counts);
    const goesOn = await db.$transaction(async (tx) => {
      if (!(await isStill(tx, key, 'checking'))) return false;
      await written(tx, key, looked);
      await tx.importRun.update({ where: { siteId_id: { siteId, id: runId } }, data: { counts: asJson(counts) } });
      return true;
    });
    if (!goesOn) return;
  }
  await toStatus(db, key, 'checking', { status: 'checked' });
}

/** What the columns and the person's word for the file make of a row; null: it stands above the data. */
export function draftOfRow(kind: ImportKind, row: SheetRow, columns: RunColumns, dialect: Dialect): Draft | null {
  if (row.line < (columns.firstDataLine ?? 1)) return null;
  return draftOf(kind, row, columns.columns, { decimal: dialect.decimal }, columns.options);
}

/** A row as it was kept: its line apart from the rest. */
export const rowOf = (line: number, cells: unknown): SheetRow => ({ ...(cells as Omit<SheetRow, 'line'>), line });

interface Looked {
  line: number;
  draft: Draft | null;
  plan: RowPlan;
  kept: KeptFor;
}

const ABOVE: RowPlan = {
  outcome: 'same',
  changes: [],
  problems: [],
  notes: [{ field: null, value: '', says: 'The row stands above the data: passed over.' }],
};
const NOTHING: KeptFor = { set: null, motor: null };

const countedWith = (counts: RunCounts, { draft, plan }: Looked): RunCounts => {
  const isPassed = draft === null || draft.skip !== null;
  const outcome = isPassed ? 'passed' : plan.outcome;
  return { ...counts, done: counts.done + 1, [outcome]: counts[outcome] + 1 };
};

/** One statement for the whole batch: a row each is ten thousand ways to the database. */
async function written(tx: Tx, { siteId, runId }: RunKey, looked: readonly Looked[]): Promise<void> {
  const rows = looked.map(({ line, draft, plan, kept }) => ({
    line,
    outcome: draft === null || draft.skip !== null ? null : plan.outcome,
    problems: plan.outcome === 'refused' ? plan.problems : plan.notes,
    changes: plan.changes,
    key: draft?.key ?? null,
    setId: kept.set?.id ?? null,
    motorId: kept.motor?.id ?? null,
  }));
  await tx.$executeRaw(Prisma.sql`
    UPDATE import_row AS r SET outcome = t.outcome, problems = t.problems, changes = t.changes,
      draft = jsonb_build_object('key', t.key), set_id = t."setId", motor_id = t."motorId"
    FROM jsonb_to_recordset(${JSON.stringify(asList(rows))}::jsonb)
      AS t(line int, outcome text, problems jsonb, changes jsonb, key text, "setId" uuid, "motorId" uuid)
    WHERE r.site_id = ${siteId}::uuid AND r.run_id = ${runId}::uuid AND r.line = t.line`);
}
