import { type Cell, cleanText, type Dialect } from './cells/cell';
import { checkDraft } from './check-draft';
import type { Field, FieldId, ImportKind } from './field';
import { fieldOf } from './fields';
import { isNotKnown } from './not-known';
import { readCell } from './read-cell';
import type { Column, Draft, DraftOptions, MotorDraft, SetDraft } from './row-draft';
import { plateOf } from './row-plate';
import type { SheetRow } from './sheet-row';
import { skipRow } from './skip-row';
import { putAt } from './value-at';

export type { Column, Draft, DraftOptions } from './row-draft';

/** Reads one row into what it tells of a set and its motor, or of a motor. Never throws, whatever stands in the cells. */
export function draftOf(
  kind: ImportKind,
  row: SheetRow,
  columns: readonly Column[],
  dialect: Dialect,
  options: DraftOptions = {},
): Draft {
  const keyId = kind === 'sets' ? 'tag' : 'plantNumber';
  const keyIndex = columns.find(({ field }) => field === keyId)?.index ?? null;
  const draft: Draft = {
    ...{ line: row.line, key: null, set: null, motor: null, problems: [], notes: [] },
    ...{ skip: skipRow(row, columns, keyIndex), cells: {}, from: {} },
  };
  if (draft.skip !== null) return draft;

  const told = cellsOf(kind, row, columns, dialect, draft);
  const values = new Map<FieldId, unknown>();
  for (const { field, cell } of told) {
    if (field.shape.as === 'plate' || field.shape.as === 'plate-text') continue;
    const read = readCell(cell, field);
    if (read.ok) {
      values.set(field.id, read.value);
      for (const says of read.notes) draft.notes.push({ field: field.id, value: cell.text, says });
    } else draft.problems.push({ field: field.id, value: cell.text, says: read.says });
  }
  const whole: Record<string, unknown> = {};
  for (const [id, value] of values) putAt(whole, (fieldOf(kind, id) as Field).path ?? [], value);
  plateOf(told, values, options, draft, whole);
  const parts = whole as { set?: SetDraft; motor?: MotorDraft };
  draft.set = kind === 'sets' ? { ...parts.set, set: parts.set?.set ?? {} } : null;
  draft.motor = parts.motor ? { ...parts.motor, motor: parts.motor.motor ?? {} } : null;
  if (kind === 'motors') draft.motor ??= { motor: {} };
  draft.key = (values.get(keyId) as string | undefined) ?? null;
  checkDraft(kind, draft, options);
  return draft;
}

/** The cells that tell something. A fault of the sheet's own is told, not read. */
function cellsOf(
  kind: ImportKind,
  row: SheetRow,
  columns: readonly Column[],
  { decimal }: Dialect,
  draft: Draft,
): { field: Field; cell: Cell }[] {
  return columns.flatMap(({ index, field: id, unit }) => {
    const field = id === null ? null : fieldOf(kind, id);
    const raw = row.cells[index];
    if (field === null || raw === undefined) return [];
    if (raw.length > LONGEST_CELL) {
      draft.problems.push({
        field: field.id,
        value: raw.slice(0, 80),
        says: `has ${raw.length} characters: no cell tells so much`,
      });
      return [];
    }
    const text = cleanText(raw);
    const type = row.types?.[index] ?? null;
    if (type === 'empty' || isNotKnown(text)) return [];
    if (/^#{2,}$/.test(text)) {
      draft.problems.push({
        field: field.id,
        value: text,
        says: 'the column was too narrow when the sheet was saved: widen it and save again',
      });
      return [];
    }
    if (type === 'error' || /^#(?:REF|VALUE|DIV\/0|NAME|NULL|NUM|SPILL|CALC)[!?]$/i.test(text)) {
      draft.notes.push({ field: field.id, value: text, says: 'is a fault of a formula: taken as not known' });
      return [];
    }
    if (draft.cells[field.id] !== undefined) {
      if (draft.cells[field.id] !== text)
        draft.problems.push({
          field: field.id,
          value: text,
          says: `another column says ${draft.cells[field.id]}: which one holds?`,
        });
      return [];
    }
    draft.cells[field.id] = text;
    return [{ field, cell: { text, type: type === 'text' ? 'text' : type, unit, decimal } }];
  });
}

const LONGEST_CELL = 8_000;
