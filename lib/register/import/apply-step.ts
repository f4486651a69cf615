import { setImmediate as pause } from 'node:timers/promises';
import type { Actor } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import { planRow } from '@/lib/import/plan';
import type { CellProblem } from '@/lib/import/row-draft';
import type { Dialect } from '@/lib/sheet/dialect';
import { changeStep, NotMade } from '../commands/change-step';
import { registerMotorsStep } from '../commands/register-motors';
import { registerSetsStep } from '../commands/register-sets';
import { draftOfRow, rowOf } from './check-step';
import { existingOf, keptFor } from './kept-for';
import { placeNames } from './place-names';
import { addRow, type Going, type ToDo } from './row-changes';
import { asJson, asList, type RunColumns, type RunCounts } from './run';
import { isStill, type RunKey, toStatus } from './run-state';
import { takenNumbers } from './taken-numbers';

/** Rows written in one transaction: all of them or none, and each of them once. */
const BATCH = 100;
const BATCH_MS = 60_000;

/**
 * Writes the rows of the dry run into the register, batch by batch under one change. What was written is marked in the
 * same transaction, so that a job begun again goes on behind it. A row that somebody's change has overtaken is refused.
 */
export async function applyStep(
  key: RunKey,
  kind: ImportKind,
  dialect: Dialect,
  columns: RunColumns,
  by: Actor & { changeId: string },
  signal: AbortSignal,
): Promise<void> {
  for (let tries = 0; ; ) {
    signal.throwIfAborted();
    await pause();
    try {
      const done = await db.$transaction((tx) => applyBatch(tx, key, kind, dialect, columns, by), {
        timeout: BATCH_MS,
      });
      if (done === 'stopped') return;
      if (done === 'all') break;
      tries = 0;
    } catch (error) {
      if (error instanceof RowRefused) await refuseRow(key, error.line, error.problems);
      else if (error instanceof NotMade && error.why.outcome === 'stale' && tries < MOST_TRIES) tries += 1;
      else throw error;
    }
  }
  await toStatus(db, key, 'applying', { status: 'applied', appliedAt: new Date() });
}

/** Somebody changed one of the rows' records in between: the batch is read anew. */
const MOST_TRIES = 5;

class RowRefused extends Error {
  override name = 'RowRefused';
  constructor(
    readonly line: number,
    readonly problems: CellProblem[],
  ) {
    super(`line ${line} cannot be written`);
  }
}

async function applyBatch(
  tx: Tx,
  key: RunKey,
  kind: ImportKind,
  dialect: Dialect,
  columns: RunColumns,
  by: Actor & { changeId: string },
): Promise<'more' | 'all' | 'stopped'> {
  const { siteId, runId } = key;
  if (!(await isStill(tx, key, 'applying'))) return 'stopped';
  const rows = await tx.importRow.findMany({
    where: { siteId, runId, outcome: { in: ['new', 'changed'] } },
    orderBy: { line: 'asc' },
    take: BATCH,
    select: { line: true, cells: true, outcome: true, changes: true },
  });
  if (rows.length === 0) return 'all';
  const drafts = rows.flatMap(({ line, cells }) => draftOfRow(kind, rowOf(line, cells), columns, dialect) ?? []);
  const kept = await keptFor(tx, siteId, drafts);
  const going = drafts.map((draft, i): Going => {
    const held = kept[i] ?? { set: null, motor: null };
    const plan = planRow(draft, existingOf(held));
    const row = rows.find(({ line }) => line === draft.line);
    if (plan.outcome === 'refused') throw new RowRefused(draft.line, plan.problems);
    if (plan.outcome !== row?.outcome || changesText(plan.changes) !== changesText(row.changes))
      throw new RowRefused(draft.line, [{ field: null, value: '', says: OVERTAKEN }]);
    return { line: draft.line, draft, plan, kept: held };
  });
  await written(tx, by, kind, going);
  await tx.importRow.updateMany({
    where: { siteId, runId, line: { in: going.map(({ line }) => line) } },
    data: { outcome: 'applied' },
  });
  await countOn(tx, key, { applied: going.length });
  return 'more';
}

const OVERTAKEN = 'was changed in the register after the dry run: check the file again to see what it would change now';

/** What a change says, whatever order its keys come back in. */
const changesText = (changes: unknown): string =>
  (changes as { field: string; from: string | null; to: string | null }[])
    .map(({ field, from, to }) => JSON.stringify([field, from, to]))
    .sort()
    .join();

async function written(tx: Tx, by: Actor & { changeId: string }, kind: ImportKind, going: readonly Going[]) {
  const toDo: ToDo = { sets: [], changes: [], motors: [] };
  const numbers = await takenNumbers(tx, by.siteId, going);
  const names = { places: await placeNames(tx, by.siteId), ...numbers };
  for (const row of going) await addRow(tx, by, kind, names, row, toDo);
  const sets = await registerSetsStep(
    tx,
    by,
    toDo.sets.map(({ set }) => set),
  );
  if (sets.outcome === 'refused') throw refusedBy(toDo.sets, sets.problems);
  try {
    if (toDo.changes.length > 0)
      await changeStep(
        tx,
        by,
        toDo.changes.map(({ change }) => change),
        NOTE,
      );
  } catch (error) {
    if (!(error instanceof NotMade) || error.why.outcome !== 'refused') throw error;
    const [first] = error.why.problems;
    const row = toDo.changes.find(({ change }) => change.id === first?.id);
    if (row === undefined) throw new Error('The register refused a change that no row of the import asked for.');
    throw new RowRefused(row.line, error.why.problems.filter(({ id }) => id === first?.id).map(asCell));
  }
  const motors = toDo.motors.map(({ motor, tag }) =>
    typeof motor === 'function' ? motor(String(sets.ids.get(String(tag)))) : motor,
  );
  const made = await registerMotorsStep(tx, by, motors);
  if (made.outcome === 'refused') throw refusedBy(toDo.motors, made.problems);
}

const NOTE = 'import';

interface Told {
  path: string;
  value: string | null;
  says: string;
}
const asCell = ({ path, value, says }: Told): CellProblem => ({
  field: null,
  value: value ?? '',
  says: `${path} ${says}`,
});

/** The first row of a list that the register refused; a problem's path begins with the place in the list. */
function refusedBy(list: readonly { line: number }[], problems: readonly Told[]): RowRefused {
  const place = Number(problems[0]?.path.split('.')[0]);
  const row = list[place];
  if (row === undefined) throw new Error('The register refused a record that no row of the import told.');
  const own = problems.filter(({ path }) => path.startsWith(`${place}.`));
  return new RowRefused(
    row.line,
    own.map((one) => asCell({ ...one, path: one.path.slice(`${place}.`.length) })),
  );
}

/** In a transaction of its own: the batch that it stood in was given up and is tried without it. */
async function refuseRow(key: RunKey, line: number, problems: readonly CellProblem[]): Promise<void> {
  const { siteId, runId } = key;
  await db.$transaction(async (tx) => {
    if (!(await isStill(tx, key, 'applying'))) return;
    const { count } = await tx.importRow.updateMany({
      where: { siteId, runId, line, outcome: { in: ['new', 'changed'] } },
      data: { outcome: 'refused', problems: asList(problems) },
    });
    if (count === 0) throw new Error(`Line ${line} of an import was refused and is not waiting.`);
    await countOn(tx, key, { refused: 1 });
  });
}

async function countOn(tx: Tx, { siteId, runId }: RunKey, more: Partial<RunCounts>): Promise<void> {
  const { counts } = await tx.importRun.findUniqueOrThrow({
    where: { siteId_id: { siteId, id: runId } },
    select: { counts: true },
  });
  const before = counts as unknown as RunCounts;
  const { applied = 0, refused = 0 } = more;
  await tx.importRun.update({
    where: { siteId_id: { siteId, id: runId } },
    data: { counts: asJson({ ...before, applied: before.applied + applied, refused: before.refused + refused }) },
  });
}
