import { cellOf } from './cell-text';
import type { Field, FieldId, ImportKind } from './field';
import { fieldsOf, headingOf } from './fields';
import type { Existing } from './kept';
import { valueAt } from './value-at';

export interface ExportColumn {
  id: FieldId;
  heading: string;
}

/** Every column in which something kept can stand. */
export const exportColumns = (kind: ImportKind): ExportColumn[] =>
  exported(kind).map((field) => ({ id: field.id, heading: headingOf(field) }));

/**
 * A set with the motor in it, or a motor, as one row under `exportColumns`: imported again it changes nothing. Null: not
 * known. Each figure is in the unit of its heading; the power is told as stamped.
 */
export const exportRow = (kind: ImportKind, kept: Existing): (string | number | null)[] =>
  exported(kind).map((field) => cellOf(field, keptAt(field, kept)));

/** Headings and rows of a whole list without the columns that no row fills: few plates have a fourth rating. */
export function exportSheet(
  kind: ImportKind,
  kept: readonly Existing[],
): { columns: ExportColumn[]; rows: (string | number | null)[][] } {
  const columns = exportColumns(kind);
  const rows = kept.map((one) => exportRow(kind, one));
  const used = columns.map(({ id }, i) => ALWAYS.has(id) || rows.some((row) => row[i] !== null));
  return {
    columns: columns.filter((_, i) => used[i]),
    rows: rows.map((row) => row.filter((_, i) => used[i])),
  };
}

const ALWAYS = new Set<FieldId>(['tag', 'plantNumber']);
const exported = (kind: ImportKind): readonly Field[] => EXPORTED[kind];
const EXPORTED = {
  sets: fieldsOf('sets').filter(({ path }) => path !== null),
  motors: fieldsOf('motors').filter(({ path }) => path !== null),
};

/** Where hp is stamped, the kW that stand beside it inside were worked out. */
function keptAt({ path }: Field, kept: Existing): unknown {
  if (path === null) return undefined;
  const isKwOfRating = path[2] === 'ratings' && path[4] === 'kw';
  const hp = isKwOfRating ? valueAt(kept, [...path.slice(0, -1), 'hp']) : null;
  return hp == null ? valueAt(kept, path) : null;
}
