import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { ImportKind } from '@/lib/import/field';
import { fieldOf } from '@/lib/import/fields';
import { normalHeading } from '@/lib/import/find-columns';
import type { DraftOptions } from '@/lib/import/row-draft';
import { unitsOf } from '@/lib/import/units-of';
import { asJson, NO_COUNTS, type RunColumns, type RunCounts } from '../import/run';
import { isStill } from '../import/run-state';
import { isId } from '../is-id';
import { queueImport } from './queue-job';

export interface ConfirmedColumns {
  /** By the column's place in the sheet: the field it tells, null: it is left out; and the unit of its figures. */
  columns: readonly { index: number; field: string | null; unit: string | null }[];
  options: DraftOptions;
  makePlaces: boolean;
}

export type ConfirmedImport =
  | { outcome: 'saved' }
  | { outcome: 'refused'; says: string[] }
  /** It waits for no such word: it was cancelled, or somebody gave it already. */
  | { outcome: 'late' }
  | { outcome: 'unknown' };

/** Takes a person's word on which column means what, remembers it for the site, and has every row looked at. */
export async function confirmImport(actor: Actor, runId: string, told: ConfirmedColumns): Promise<ConfirmedImport> {
  must(actor, 'import.run');
  const { siteId } = actor;
  if (!isId(runId)) return { outcome: 'unknown' };
  return db.$transaction(async (tx) => {
    const where = { siteId_id: { siteId, id: runId } };
    const run = await tx.importRun.findUnique({
      where,
      select: { kind: true, status: true, columns: true, counts: true },
    });
    if (run === null) return { outcome: 'unknown' };
    if (run.status !== 'ready' && run.status !== 'checked') return { outcome: 'late' };
    if (!(await isStill(tx, { siteId, runId }, run.status))) return { outcome: 'late' };
    const kind = run.kind as ImportKind;
    const found = run.columns as unknown as RunColumns;
    const says = problemsOf(kind, found, told);
    if (says.length > 0) return { outcome: 'refused', says };
    const columns = found.columns.map((column) => {
      const said = told.columns.find(({ index }) => index === column.index);
      return said === undefined ? column : { ...column, field: said.field, unit: unitFor(kind, said) };
    });
    const { rows } = run.counts as unknown as RunCounts;
    const { options, makePlaces } = told;
    await tx.importRun.update({
      where,
      data: {
        ...{ status: 'checking', changedAt: new Date() },
        columns: asJson({ ...found, columns, options, makePlaces }),
        counts: asJson({ ...NO_COUNTS, rows }),
      },
    });
    await remember(tx, siteId, kind, columns);
    await record(tx, actor, { action: 'import.check', thing: 'import', thingId: runId });
    await queueImport(tx, actor, runId);
    return { outcome: 'saved' };
  });
}

/** A unit that the field's figures cannot be in is none: the field was chosen anew beside it. */
function unitFor(kind: ImportKind, { field, unit }: { field: string | null; unit: string | null }): string | null {
  const known = field === null ? null : fieldOf(kind, field);
  return known !== null && unit !== null && unitsOf(known).includes(unit) ? unit : null;
}

function problemsOf(kind: ImportKind, found: RunColumns, { columns }: ConfirmedColumns): string[] {
  const key = kind === 'sets' ? 'tag' : 'plantNumber';
  const used = new Map<string, string>();
  const says: string[] = [];
  for (const { index, field } of columns) {
    const column = found.columns.find((one) => one.index === index);
    if (column === undefined) says.push(`There is no column ${index + 1} in the file.`);
    if (field === null || column === undefined) continue;
    const known = fieldOf(kind, field);
    const name = column.heading || `column ${index + 1}`;
    if (known === null) says.push(`“${field.slice(0, 60)}” is no field of ${kind}.`);
    else if (used.has(field)) says.push(`“${used.get(field)}” and “${name}” both are ${known.label}: choose one.`);
    used.set(field, name);
  }
  if (!used.has(key) && says.length === 0)
    says.push(
      kind === 'sets'
        ? 'No column is the tag: a set is known by it.'
        : 'No column is the motor number: a motor is known by it.',
    );
  return says;
}

/** What a heading means at this site, for the next file. A column without a heading teaches nothing. */
async function remember(tx: Tx, siteId: string, kind: ImportKind, columns: RunColumns['columns']): Promise<void> {
  for (const { heading, field } of columns) {
    const normal = normalHeading(heading).slice(0, 200);
    if (normal === '') continue;
    const where = { siteId_kind_heading: { siteId, kind, heading: normal } };
    await tx.knownHeading.upsert({ where, create: { siteId, kind, heading: normal, field }, update: { field } });
  }
}
