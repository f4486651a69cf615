import type { PlateMotor, RatingInput } from '@/lib/nameplate/plate-reading';
import { readPlate } from '@/lib/nameplate/read-plate';
import type { FieldId } from './field';
import { type PlateCell, plateCells } from './plate-cells';
import { doubtsApart } from './plate-problems';
import type { CellProblem, Draft, DraftOptions } from './row-draft';
import { putAt, valueAt } from './value-at';

/** Reads the cells that are the plate's, and puts what they tell into the row beside what its other cells told. */
export function plateOf(
  told: readonly PlateCell[],
  values: ReadonlyMap<FieldId, unknown>,
  options: DraftOptions,
  draft: Draft,
  whole: Record<string, unknown>,
): void {
  const value = (id: FieldId) => draft.cells[id] ?? '';
  const stamped = told.filter(({ field }) => field.shape.as === 'plate');
  const poles = values.get('poles');
  const read = plateCells(stamped, typeof poles === 'number' ? poles : null);
  const kept = options.keepUnknownWords === true ? unknownWords(read.problems, draft) : new Map<FieldId, string>();
  draft.problems.push(
    ...read.problems.filter(({ field }) => !kept.has(field)).map((one) => ({ ...one, value: value(one.field) })),
  );
  draft.notes.push(...read.notes.map((one) => ({ ...one, value: value(one.field) })));
  for (const [id, text] of kept) putAt(whole, ['motor', 'motor', id === 'im' ? 'mounting' : id], text);

  const text = told.find(({ field }) => field.shape.as === 'plate-text');
  const plate = text ? plateText(text.cell.text, draft) : {};
  const fromText = Object.fromEntries(Object.keys(plate).map((key) => [key, 'plateText']));
  put(read.motor, read.from, draft, whole);
  put(plate, fromText, draft, whole);
}

function plateText(text: string, draft: Draft): PlateMotor {
  const read = readPlate(text);
  const { problems, doubts } = doubtsApart(read);
  const told = (one: { path: string; value: string | null; says: string }): CellProblem => ({
    field: 'plateText',
    value: text,
    says: `${one.value ?? one.path}: ${one.says}`,
  });
  draft.problems.push(...problems.map(told));
  draft.notes.push(...doubts.map(told));
  if (read.unread.length > 0) {
    const unread = read.unread
      .join('; ')
      .replaceAll(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]+/gu, ' ')
      .slice(0, 4_000);
    draft.notes.push({ field: 'plateText', value: text, says: `not understood: ${unread}` });
    const { poles: _, ...rest } = read.motor;
    return { ...rest, ...{ unread } } as PlateMotor;
  }
  const { poles: _, ...rest } = read.motor;
  return rest;
}

/** Each value where nothing else is told; where something else is, the two must say the same. */
function put(
  motor: PlateMotor,
  from: Partial<Record<string, FieldId>>,
  draft: Draft,
  whole: Record<string, unknown>,
): void {
  for (const [key, value] of Object.entries(motor)) {
    const path = key === 'unread' ? ['motor', 'unread'] : ['motor', 'motor', key];
    const there = valueAt(whole, path);
    const source = from[key];
    const id = idOf(key);
    if (there === undefined) {
      putAt(whole, path, value);
      if (source !== undefined && key !== 'ratings') draft.from[id] = source;
      continue;
    }
    const both = key === 'ratings' ? oneRating(there as RatingInput[], value as RatingInput[]) : null;
    if (both !== null) putAt(whole, path, both);
    else if (JSON.stringify(there) !== JSON.stringify(value))
      draft.problems.push({
        field: source ?? id,
        value: draft.cells[source ?? id] ?? '',
        says:
          key === 'ratings'
            ? 'tells other ratings than the row does elsewhere: which hold?'
            : `says ${String(value)} where the row says ${String(there)} elsewhere: which one holds?`,
      });
  }
}

const idOf = (key: string): FieldId => (key === 'mounting' ? 'im' : key);

/** One row told twice, each time in part, is one row as long as neither part says otherwise. */
function oneRating(a: readonly RatingInput[], b: readonly RatingInput[]): RatingInput[] | null {
  const [one, other] = [a[0], b[0]];
  if (a.length !== 1 || b.length !== 1 || !one || !other) return null;
  const isSame = (Object.keys(other) as (keyof RatingInput)[]).every(
    (key) => one[key] === undefined || one[key] === other[key],
  );
  const hasTwoPowers =
    (one.hp !== undefined && other.kw !== undefined) || (one.kw !== undefined && other.hp !== undefined);
  return isSame && !hasTwoPowers ? [{ ...other, ...one }] : null;
}

/** Words of the plate that its readers do not know, where a person said to keep them. What could be two things stays a problem. */
function unknownWords(problems: readonly { field: FieldId; says: string }[], draft: Draft): Map<FieldId, string> {
  const kept = new Map<FieldId, string>();
  for (const { field, says } of problems) {
    if (!['frame', 'im', 'enclosure'].includes(field) || !/known here/.test(says)) continue;
    const text = draft.cells[field] ?? '';
    if (text.length > (field === 'enclosure' ? 20 : 40)) continue;
    kept.set(field, text);
    draft.notes.push({ field, value: text, says: `${says}; kept as it stands` });
  }
  return kept;
}
