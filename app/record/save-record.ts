import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import type { Action, Actor } from '@/lib/auth/may';
import { isDatabaseGone } from '@/lib/db/database-gone';
import type { Field, Units } from '@/lib/fields/field';
import { type FormProblem, readForm, shownIn, type Typed } from '@/lib/fields/read-form';
import type { Edit, State } from '@/lib/fields/state';
import type { Problem } from '@/lib/plant/reading';
import type { ChangeOutcome } from '@/lib/register/commands/change-things';
import { changeThings } from '@/lib/register/commands/change-things';
import { ownUnits } from '@/lib/register/queries/own-units';
import { recordNow } from '@/lib/register/queries/record-now';
import type { ThingName } from '@/lib/register/things/thing';
import { type PictureWord, toldAt } from '../pictures/picture-words';
import { refusedByRole } from '../refused-by-role';
import { whoDoes } from '../who-is-here';
import { type RecordState, withTheirs } from './record-state';
import { baseIn, typedIn } from './typed-in';

export interface RecordKind {
  thing: ThingName;
  may: Action;
  fields: readonly Field[];
  hasRatings: boolean;
  /** Inputs beside the fields. */
  more: readonly string[];
  /** What the inputs beside the fields show of a record, and change of it. */
  shown: (state: State) => Typed;
  edit: (actor: Actor, state: State, typed: Typed) => Promise<{ edit: Edit; problems: FormProblem[] }>;
  /** The name of the input at which a problem of the register's is shown. */
  inputOf: (path: string) => string;
  /** Makes a new record of it. */
  make: (actor: Actor, edit: Edit) => Promise<Made>;
  /** Keeps the picture that came with the form, once the record is saved, and tells what came of it; null: none came. */
  keepPicture?: (actor: Actor, id: string, form: FormData) => Promise<PictureWord | null>;
  /** Where the saved record is shown. */
  pathOf: (actor: Actor, id: string) => Promise<string>;
}

export type Made =
  | { outcome: 'saved'; changeId: string; id: string }
  | { outcome: 'refused'; problems: readonly Problem[] };

/** Saves a record's form: a new record, or the changes of one. What was typed stays in its fields, whatever comes of it. */
export async function saveRecord(kind: RecordKind, before: RecordState, form: FormData): Promise<RecordState> {
  const typed = typedIn(form, kind.fields, kind.more);
  const version = Number(form.get('version') ?? '');
  const id = String(form.get('record') ?? '');
  const state = { typed, base: baseIn(form), version: id === '' ? null : version };
  if (form.get('intent') === 'read') return { ...state, outcome: 'read' };
  if (id !== '' && !(Number.isSafeInteger(version) && version > 0)) return { ...before, outcome: 'asked' };
  let path: string;
  try {
    const actor = await whoDoes(kind.may);
    if (actor === null) return { ...state, outcome: 'signed-out' };
    const units = await ownUnits(actor);
    const stands = id === '' ? { state: {}, version: 0 } : await recordNow(actor, kind.thing, id);
    if (stands === null)
      return refused(state, [{ path: 'record', says: 'It is not in the register of this site any more.' }]);
    if (id !== '' && stands.version !== version) return stale(kind, state, stands, units);
    const read = readForm(kind.fields, stands.state, typed, units, kind);
    const beside = await kind.edit(actor, stands.state, typed);
    const problems = [...read.problems, ...beside.problems];
    if (problems.length > 0) return refused(state, problems);
    const edit = { ...read.edit, ...beside.edit };
    const done: ChangeOutcome | Made =
      id === '' ? await kind.make(actor, edit) : await changeThings(actor, [{ thing: kind.thing, id, version, edit }]);
    switch (done.outcome) {
      case 'same': {
        const word = await pictureKept(kind, actor, id, form);
        if (word === null) return { ...state, outcome: 'same' };
        path = toldAt(await kind.pathOf(actor, id), word);
        break;
      }
      case 'stale':
        return stale(kind, state, done, units);
      case 'refused':
        return refused(
          state,
          done.problems.map((problem) => worded(kind, problem)),
        );
      case 'saved': {
        const saved = 'id' in done ? done.id : id;
        path = `${await kind.pathOf(actor, saved)}?changed=${done.changeId}`;
        const word = await pictureKept(kind, actor, saved, form);
        if (word !== null) path = toldAt(path, word);
      }
    }
  } catch (error) {
    if (isDatabaseGone(error)) return { ...state, outcome: 'away' };
    const says = refusedByRole(error);
    if (says === null) throw error;
    return refused(state, [{ path: 'record', says }]);
  }
  revalidatePath('/', 'layout');
  redirect(path);
}

/** The record stands whatever becomes of its picture: a failure here is told, and takes nothing back. */
async function pictureKept(kind: RecordKind, actor: Actor, id: string, form: FormData): Promise<PictureWord | null> {
  try {
    return (await kind.keepPicture?.(actor, id, form)) ?? null;
  } catch (error) {
    console.error('a picture could not be kept with its record', error);
    return 'failed';
  }
}

type Kept = Pick<RecordState, 'typed' | 'base' | 'version'>;
const refused = (state: Kept, problems: readonly FormProblem[]): RecordState => ({
  ...state,
  outcome: 'refused',
  problems,
});

function stale(
  kind: RecordKind,
  { typed, base }: Kept,
  stands: { state: State; version: number },
  units: Units,
): RecordState {
  const now = { ...shownIn(kind.fields, stands.state, units, kind), ...kind.shown(stands.state) };
  return { outcome: 'stale', typed: withTheirs(typed, base, now), base: now, version: stands.version, now };
}

function worded(kind: RecordKind, { path, value, says }: Problem): FormProblem {
  const input = kind.inputOf(path.replace(/^0\./, ''));
  const label = kind.fields.find((field) => field.path === input)?.label ?? input;
  return { path: input, says: `${label}: ${value === null ? '' : `“${value}” `}${says}.` };
}
