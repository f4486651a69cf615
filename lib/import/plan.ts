import { type Change, changesBetween, saysWhatIsKept } from './changes-between';
import type { Field, ImportKind } from './field';
import { fieldOf } from './fields';
import type { Existing } from './kept';
import { newProblems, placeProblems } from './plan-problems';
import type { CellProblem, Draft, MotorDraft, SetDraft } from './row-draft';
import { plain } from './same-value';
import { valueAt } from './value-at';

export type { Change } from './changes-between';
export type { Existing } from './kept';

export interface RowPlan {
  outcome: 'new' | 'changed' | 'same' | 'refused';
  changes: Change[];
  problems: CellProblem[];
  notes: CellProblem[];
}

/** What a row would do to the register. `existing` is what the register holds for it; null: nothing. */
export function planRow(draft: Draft, existing: Existing | null): RowPlan {
  const kind: ImportKind = draft.set === null ? 'motors' : 'sets';
  if (draft.skip !== null)
    return { ...NOTHING, notes: [{ field: null, value: '', says: `The row ${draft.skip}: passed over.` }] };
  const kept: Existing = { set: existing?.set ?? null, motor: existing?.motor ?? null };
  const isOld = ({ field: id, value }: CellProblem): boolean => {
    const field: Field | null = id === null ? null : fieldOf(kind, id);
    return field?.path != null && saysWhatIsKept(field, value, valueAt(kept, field.path));
  };
  const between = changesBetween(kind, draft, kept);
  const isNew = kind === 'sets' ? kept.set === null : kept.motor === null;
  const problems = [
    ...draft.problems.filter((one) => !isOld(one)),
    ...between.problems,
    ...placeProblems(kind, draft, kept),
    ...newProblems(kind, draft, kept, between.changes),
  ];
  const notes = [...draft.notes.filter((one) => !isOld(one)), ...between.notes, ...numberNotes(kind, draft, kept)];
  if (problems.length > 0) return { outcome: 'refused', changes: [], problems, notes };
  const { changes } = between;
  return { outcome: isNew ? 'new' : changes.length > 0 ? 'changed' : 'same', changes, problems, notes };
}

const NOTHING: RowPlan = { outcome: 'same', changes: [], problems: [], notes: [] };

function numberNotes(kind: ImportKind, draft: Draft, kept: Existing): CellProblem[] {
  if (kind === 'motors' || draft.motor === null || kept.motor !== null || draft.motor.motor.id !== undefined) return [];
  return [{ field: 'plantNumber', value: '', says: 'tells no motor number: one has to be given to its motor' }];
}

/**
 * Plans the rows of one file, in order, and remembers them: a key that comes again with the same values changes
 * nothing, one that comes again with others is refused and names the line where it stood first.
 */
export function planner(kind: ImportKind): { plan(draft: Draft, existing: Existing | null): RowPlan } {
  const byKey = new Map<string, Seen>();
  const byLook = new Map<string, { key: string; line: number }>();
  const tagOfMotor = new Map<string, { key: string; line: number }>();
  return {
    plan(draft, existing) {
      const plan = planRow(draft, existing);
      if (draft.key === null || draft.skip !== null || plan.outcome === 'refused') return plan;
      const key = plain(draft.key);
      const before = byKey.get(key);
      if (before) return again(kind, draft, before, plan);
      const number = kind === 'sets' ? draft.motor?.motor.id : undefined;
      const other = number === undefined ? undefined : tagOfMotor.get(plain(number));
      if (number !== undefined && other)
        return refusedBy(plan, 'plantNumber', number, `is the motor of ${other.key} on line ${other.line} already`);
      byKey.set(key, { line: draft.line, set: draft.set, motor: draft.motor });
      if (number !== undefined) tagOfMotor.set(plain(number), { key: draft.key, line: draft.line });
      const look = key.replaceAll(/[^\p{L}\p{N}]/gu, '');
      const alike = byLook.get(look);
      byLook.set(look, alike ?? { key: draft.key, line: draft.line });
      if (!alike) return plan;
      const says = `looks like ${alike.key} on line ${alike.line}: two things, or one spelt twice?`;
      return {
        ...plan,
        notes: [...plan.notes, { field: kind === 'sets' ? 'tag' : 'plantNumber', value: draft.key, says }],
      };
    },
  };
}

interface Seen {
  line: number;
  set: SetDraft | null;
  motor: MotorDraft | null;
}

function again(kind: ImportKind, draft: Draft, before: Seen, plan: RowPlan): RowPlan {
  const { changes } = changesBetween(kind, { ...draft, from: {} }, {
    set: before.set,
    motor: before.motor,
  } as Existing);
  const field = kind === 'sets' ? 'tag' : 'plantNumber';
  const value = draft.key ?? '';
  if (changes.length > 0) {
    const [first, ...more] = changes.map(
      (one) =>
        `${fieldOf(kind, one.field)?.label ?? one.field}: ${one.from ?? 'nothing'} there, ${one.to ?? 'nothing'} here`,
    );
    const others = more.length === 0 ? '' : ` and ${more.length} more`;
    return refusedBy(plan, field, value, `stands on line ${before.line} already with other values (${first}${others})`);
  }
  const note = { field, value, says: `says the same as line ${before.line}` };
  return { outcome: 'same', changes: [], problems: [], notes: [...plan.notes, note] };
}

const refusedBy = (plan: RowPlan, field: string, value: string, says: string): RowPlan => ({
  outcome: 'refused',
  changes: [],
  problems: [{ field, value, says }],
  notes: plan.notes,
});
