import { type Edit, type Leaf, type State, stateOf } from '@/lib/fields/state';
import type { Change } from '@/lib/import/changes-between';

/** What is told by name in a sheet and kept by id in the register. */
const BY_NAME: Readonly<Record<'set' | 'motor', readonly string[]>> = { set: ['area'], motor: ['store', 'shelf'] };
const CLASSIFICATION = /(?:^|\.)classification$/;

/** A plan's changes as the fields of one record; names of places apart. */
export function editOf(record: 'set' | 'motor', changes: readonly Change[], stands: State): Edit {
  const edit: Record<string, Leaf | null> = {};
  for (const change of changes) {
    if (change.record !== record || BY_NAME[record].includes(change.path)) continue;
    if (change.to === null) {
      edit[change.path] = null;
      continue;
    }
    // A mark is told whole: what the old one had and the new one lacks goes.
    if (CLASSIFICATION.test(change.path))
      for (const path of Object.keys(stands))
        if (path === change.path || path.startsWith(`${change.path}.`)) edit[path] = null;
    Object.assign(edit, stateOf(nested(change.path, change.value)));
  }
  return edit;
}

/** A value under its path, as an object has it: an unclassified place is told by a null, and only there. */
function nested(path: string, value: unknown): object {
  return path
    .split('.')
    .reverse()
    .reduce<unknown>((inner, key) => ({ [key]: inner }), value) as object;
}
