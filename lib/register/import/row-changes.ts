import type { Tx } from '@/lib/db/client';
import type { Draft } from '@/lib/import/draft';
import type { ImportKind } from '@/lib/import/field';
import type { RowPlan } from '@/lib/import/plan';
import type { Change } from '../commands/change-step';
import type { NewMotor } from '../commands/register-motors';
import type { NewSet } from '../commands/register-sets';
import type { MotorPlace } from '../motor-columns';
import type { KeptFor } from './kept-for';
import { broughtBack, newMotor, newSet, numberFor, stateOfMotor, stateOfSet } from './new-records';
import { areaNamed, type By, type PlaceNames, placesOf, shelfNamed } from './place-names';
import { editOf } from './row-edit';

/** One row on its way into the register. */
export interface Going {
  line: number;
  draft: Draft;
  plan: RowPlan;
  kept: KeptFor;
}

/** What the rows of one batch come to. The lines say whose each is. */
export interface ToDo {
  sets: { line: number; set: NewSet }[];
  changes: { line: number; change: Change }[];
  /** Into the set of a row that is new: its id is known only when the set stands. */
  motors: { line: number; motor: NewMotor | ((setId: string) => NewMotor); tag: string | null }[];
}

/** Works out what a row's plan writes; areas and shelves that are named are made on the way. */
export async function addRow(tx: Tx, by: By, kind: ImportKind, names: Names, row: Going, toDo: ToDo): Promise<void> {
  const { line, draft, plan, kept } = row;
  const changed = new Set(plan.changes.map(({ field }) => field));
  const places = placesOf(kind, draft, changed, kept.motor?.kept ?? null);
  const change = (thing: 'set' | 'motor', id: string, version: number, edit: Change['edit']) => {
    if (Object.keys(edit).length > 0) toDo.changes.push({ line, change: { thing, id, version, edit } });
  };
  const { set, motor } = kept;
  const areaId = places.area === null ? null : await areaNamed(tx, by, names.places, places.area);
  if (kind === 'sets') {
    if (set === null) toDo.sets.push({ line, set: newSet(draft, areaId) });
    else if (set.isRetired)
      change('set', set.id, set.version, broughtBack(set.state, stateOfSet(newSet(draft, areaId))));
    else
      change('set', set.id, set.version, {
        ...editOf('set', plan.changes, set.state),
        ...(areaId !== null && { areaId }),
      });
  }
  if (draft.motor === null) return;
  if (motor !== null && !motor.isRetired) {
    const shelfId = places.shelf && (await shelfNamed(tx, by, names.places, places.shelf.store, places.shelf.name));
    const leaves = changed.has('place') && draft.motor.place !== 'on-shelf';
    change('motor', motor.id, motor.version, {
      ...editOf('motor', plan.changes, motor.state),
      ...(shelfId !== null && { shelfId }),
      ...(kind === 'motors' && leaves && { shelfId: null }),
    });
    return;
  }
  const number = draft.motor.motor.id ?? numberFor(String(draft.key), (one) => names.isTaken(one));
  names.take(number);
  const make = (at: MotorPlace) => newMotor(draft, number, at);
  if (kind === 'sets') {
    if (!isMotorTold(draft)) return;
    const into = (setId: string): NewMotor => make({ place: 'in-set', setId });
    const setId = set?.id ?? null;
    if (motor !== null && setId !== null)
      change('motor', motor.id, motor.version, broughtBack(motor.state, stateOfMotor(into(setId))));
    else toDo.motors.push({ line, motor: setId === null ? into : into(setId), tag: draft.key });
    return;
  }
  const at = await placeOf(tx, by, names.places, places.shelf, draft);
  if (motor === null) toDo.motors.push({ line, motor: make(at), tag: null });
  else change('motor', motor.id, motor.version, broughtBack(motor.state, stateOfMotor(make(at))));
}

/** The places by name, and the numbers that no new motor may have. */
export interface Names {
  places: PlaceNames;
  isTaken: (number: string) => boolean;
  take: (number: string) => void;
}

/** A row of sets whose motor's cells are all empty has no motor. */
const isMotorTold = ({ motor }: Draft): boolean => {
  if (motor === null) return false;
  const { motor: plate, ...about } = motor;
  return [...Object.values(plate), ...Object.values(about)].some((value) => value !== undefined && value !== null);
};

async function placeOf(
  tx: Tx,
  by: By,
  names: PlaceNames,
  shelf: { store: string; name: string } | null,
  { motor }: Draft,
): Promise<MotorPlace> {
  if (shelf !== null) return { place: 'on-shelf', shelfId: await shelfNamed(tx, by, names, shelf.store, shelf.name) };
  return { place: motor?.place } as MotorPlace;
}
