import type { Change } from './changes-between';
import type { ImportKind } from './field';
import type { Existing } from './kept';
import type { CellProblem, Draft } from './row-draft';
import { plain } from './same-value';

/** What stands in the way because of where a motor is: putting one into a set or taking it out is a swap, not a correction. */
export function placeProblems(kind: ImportKind, draft: Draft, { set, motor }: Existing): CellProblem[] {
  const number = draft.motor?.motor.id;
  if (kind === 'motors') {
    if (motor?.place !== 'in-set' || draft.motor?.place === undefined) return [];
    return [
      {
        field: 'place',
        value: draft.cells.place ?? '',
        says: `is in ${motor.setTag ?? 'a set'}: record the swap that takes it out`,
      },
    ];
  }
  if (number === undefined) return [];
  const tell = (says: string): CellProblem[] => [{ field: 'plantNumber', value: number, says }];
  const holds = set?.holds ?? null;
  if (holds !== null && plain(holds) !== plain(number))
    return tell(`${draft.key ?? ''} holds ${holds}: record the swap, or leave the motor number out`);
  if (motor !== null && motor.place !== 'in-set')
    return tell(`is recorded ${PLACES[motor.place]}: record the swap that puts it in`);
  if (motor?.place === 'in-set' && motor.setTag !== null && plain(motor.setTag) !== plain(draft.key ?? ''))
    return tell(`is recorded in ${motor.setTag}: a motor is in one set`);
  return [];
}

const PLACES = { 'on-shelf': 'on a shelf', 'at-repair': 'at repair', 'on-order': 'on order', scrapped: 'as scrapped' };

/** What a thing new to the register must tell. */
export function newProblems(kind: ImportKind, draft: Draft, kept: Existing, changes: readonly Change[]): CellProblem[] {
  const tell = (field: string, says: string): CellProblem => ({ field, value: draft.cells[field] ?? '', says });
  if (draft.key === null) return [];
  if (kind === 'motors') return motorProblems(draft, kept, tell);
  if (kept.set !== null) return [];
  const own = changes.filter(({ field }) => field !== 'tag' && draft.from[field] === undefined);
  if (own.length === 0) return [tell('tag', 'stands alone in its row: is it a heading?')];
  const isUntold = draft.set?.set.mounting === undefined && draft.cells.mounting === undefined;
  return isUntold ? [tell('mounting', 'is missing: say how the set holds its motor (foot, face, foot and face)')] : [];
}

type Tell = (field: string, says: string) => CellProblem;

function motorProblems(draft: Draft, { motor: kept }: Existing, tell: Tell): CellProblem[] {
  const { motor } = draft;
  const place = motor?.place ?? kept?.place;
  if (place === undefined) {
    if (draft.cells.place !== undefined || draft.cells.shelf !== undefined) return [];
    return [tell('place', 'is missing: say where the motor is (a store and shelf, at repair, on order)')];
  }
  if (place !== 'on-shelf' || motor === null) return [];
  const store = motor.store ?? kept?.store ?? null;
  const shelf = motor.shelf ?? kept?.shelf ?? null;
  if (store === null) return [tell('store', 'is missing: say the store in which the shelf is')];
  return shelf === null ? [tell('shelf', 'is missing: say the shelf')] : [];
}
