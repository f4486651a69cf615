import { cellOf, shownOf } from './cell-text';
import type { Field, FieldId, ImportKind, Thing } from './field';
import { fieldOf, fieldsOf } from './fields';
import type { Existing } from './kept';
import { alignRatings, type RatingRow } from './rating-rows';
import type { CellProblem, Draft } from './row-draft';
import { isSamePower, isSameValue } from './same-value';
import { valueAt } from './value-at';

/** One value that a row would change. Null: not known before; `to` null: the same power in its other unit is dropped. */
export interface Change {
  thing: Thing;
  field: FieldId;
  from: string | null;
  to: string | null;
  /** Where it stands in the record of the set or the motor ("seat.boltMm", "ratings.0.hp"), and what it becomes. */
  record: 'set' | 'motor';
  path: string;
  value: unknown;
}

/** What a row tells otherwise than the register. A cell that tells nothing changes nothing. */
export function changesBetween(
  kind: ImportKind,
  draft: Pick<Draft, 'set' | 'motor' | 'cells' | 'from'>,
  kept: Pick<Existing, 'set' | 'motor'>,
): { changes: Change[]; problems: CellProblem[]; notes: CellProblem[] } {
  const changes: Change[] = [];
  const notes: CellProblem[] = [];
  const told = { set: draft.set, motor: draft.motor };
  for (const field of fieldsOf(kind)) {
    if (field.path === null || isOfRating(field)) continue;
    const to = valueAt(told, field.path);
    if (to === undefined) continue;
    const from = valueAt(kept, field.path);
    if (saysWhatIsKept(field, draft.cells[field.id], from) || isSameValue(field, from, to)) continue;
    const source = draft.from[field.id];
    if (source !== undefined) {
      const sourceField = fieldOf(kind, source);
      const isOld =
        sourceField?.path && saysWhatIsKept(sourceField, draft.cells[source], valueAt(kept, sourceField.path));
      if (isOld) continue;
      if (isTold(field, from)) {
        if (sourceField)
          notes.push({
            field: source,
            value: draft.cells[source] ?? '',
            says: `would make ${field.label} ${shownOf(field, to)}; ${shownOf(field, from)} is recorded and stays`,
          });
        continue;
      }
    }
    changes.push(changeOf(field, from, to));
  }
  changes.push(...leftShelf(kind, draft, kept));
  const ratings = ratingChanges(kind, draft, kept);
  return { changes: [...changes, ...ratings.changes], problems: ratings.problems, notes };
}

/** Whether a cell says, sign for sign, what an export of the record would say: then it needs no reading. */
export function saysWhatIsKept(field: Field, cell: string | undefined, kept: unknown): boolean {
  if (cell === undefined) return false;
  const own = cellOf(field, kept);
  return own !== null && String(own) === cell;
}

/** An unclassified place is told: a person said so. */
const isTold = ({ shape }: Field, value: unknown): boolean =>
  value !== undefined && (value !== null || (shape.as === 'classification' && shape.mayBeUnclassified));

/** A motor that leaves its shelf leaves it, though no cell says so. */
function leftShelf(kind: ImportKind, { motor }: Pick<Draft, 'motor'>, kept: Pick<Existing, 'motor'>): Change[] {
  if (kind === 'sets' || motor?.place === undefined || motor.place === 'on-shelf') return [];
  return ['store', 'shelf'].flatMap((id) => {
    const field = fieldOf(kind, id);
    const from = field?.path ? valueAt(kept, field.path) : undefined;
    return field && from != null ? [changeOf(field, from, null)] : [];
  });
}

const isOfRating = ({ path }: Field): boolean => path?.[2] === 'ratings';

const ROOTS: readonly (readonly [string, 'set' | 'motor'])[] = [
  ['set.set.', 'set'],
  ['set.', 'set'],
  ['motor.motor.', 'motor'],
  ['motor.', 'motor'],
];

function changeOf(field: Field, from: unknown, to: unknown): Change {
  const whole = (field.path ?? []).join('.');
  const [root, record] = ROOTS.find(([start]) => whole.startsWith(start)) ?? ['', 'set'];
  const path = whole.slice(root.length);
  return {
    ...{ thing: field.thing, field: field.id, from: shownOf(field, from), to: shownOf(field, to) },
    ...{ record, path: path === 'supplyName' ? 'supply.name' : path, value: to },
  };
}

function ratingChanges(
  kind: ImportKind,
  draft: Pick<Draft, 'motor' | 'cells'>,
  kept: Pick<Existing, 'motor'>,
): { changes: Change[]; problems: CellProblem[] } {
  const told = (draft.motor?.motor.ratings ?? []) as RatingRow[];
  const there = ((kept.motor?.motor.ratings ?? []) as RatingRow[]).map(asStamped);
  const isByRow = Object.keys(draft.cells).some((id) => /^rating\d/.test(id));
  const aligned = isByRow ? { places: told.map((_, i) => i), problem: null } : alignRatings(told, there);
  if (aligned.problem !== null) return { changes: [], problems: [{ field: null, value: '', says: aligned.problem }] };
  const changes: Change[] = [];
  for (const [i, row] of told.entries()) {
    const at = aligned.places[i] as number;
    const before = there[at] ?? {};
    const field = (key: string) => fieldOf(kind, `rating${at + 1}.${key}`);
    const isPowerSame = isSamePower(row, before);
    for (const [key, value] of Object.entries(row)) {
      const of = field(key);
      const isPower = key === 'hp' || key === 'kw';
      if (!of || value === null || value === undefined) continue;
      const from = before[key as keyof RatingRow];
      if (isPower ? isPowerSame : isSameValue(of, from, value)) continue;
      changes.push(changeOf(of, from, value));
      const other = field(key === 'hp' ? 'kw' : 'hp');
      const otherKept = before[key === 'hp' ? 'kw' : 'hp'];
      if (isPower && other && otherKept != null) changes.push(changeOf(other, otherKept, null));
    }
  }
  return { changes, problems: [] };
}

/** Inside, kW stands beside the stamped hp: it was worked out. */
const asStamped = (row: RatingRow): RatingRow => (row.hp == null ? row : { ...row, kw: null });
