import { type Entry, record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import { at, difference, type Edit, edited, objectOf, type State, stateOf } from '@/lib/fields/state';
import type { Problem } from '@/lib/plant/reading';
import { ALL_THINGS } from '../things/all-things';
import { type Stands, THINGS, type ThingName } from '../things/thing';

/** One record's fields to be given other values. `version` null: whatever version stands. */
export interface Change {
  thing: ThingName;
  id: string;
  version: number | null;
  edit: Edit;
}

export type ChangeProblem = Problem & { thing: ThingName; id: string };

/** Why a change was not made. */
export type NotMadeOutcome =
  /** Somebody changed a record after it was read: what stands now, and under which version. */
  | { outcome: 'stale'; thing: ThingName; id: string; state: State; version: number }
  | { outcome: 'refused'; problems: ChangeProblem[] };

/** Thrown out of the transaction, so that what was written of the change is given up with it. */
export class NotMade extends Error {
  override name = 'NotMade';
  constructor(readonly why: NotMadeOutcome) {
    super(`Not made: ${why.outcome}`);
  }
}

/**
 * The step of every command that changes records: the version of each that was changed; empty when everything stands so
 * already. Who changes, and under which change, stands in `by`. Throws NotMade.
 */
export async function changeStep(
  tx: Tx,
  by: Actor & { changeId: string },
  changes: readonly Change[],
  note: string | null,
): Promise<Map<string, number>> {
  const wrong = changes.flatMap(badIds);
  if (wrong.length > 0) throw new NotMade({ outcome: 'refused', problems: wrong });
  const standing = await lockedAll(tx, by.siteId, changes);
  const entries: Entry[] = [];
  const made: Change[] = [];
  for (const change of [...changes].sort((a, b) => turnOf(a) - turnOf(b))) {
    const { thing, id, version, edit } = change;
    const stands = standing.get(id);
    if (stands === undefined)
      throw new NotMade({ outcome: 'refused', problems: [{ thing, id, path: 'id', value: id, says: NOT_HERE }] });
    if (version !== null && version !== stands.version) throw new NotMade({ outcome: 'stale', thing, id, ...stands });
    // Through an object and back: rows that tell nothing any more are gone.
    const state = stateOf(objectOf(edited(stands.state, edit)));
    const differs = difference(stands.state, state);
    if (differs === null) continue;
    const problems = await ALL_THINGS[thing].problems(tx, by.siteId, id, state);
    if (problems.length > 0)
      throw new NotMade({ outcome: 'refused', problems: problems.map((problem) => ({ thing, id, ...problem })) });
    await ALL_THINGS[thing].write(tx, by.siteId, id, state);
    entries.push({ action: `${thing}.change`, thing, thingId: id, ...differs, note });
    made.push(change);
  }
  if (made.length > 0) await record(tx, by, ...entries);
  return versionsOf(tx, by.siteId, made);
}

const NOT_HERE = 'is not in the register of this site';
const ID_PATHS = ['areaId', 'storeId', 'shelfId', 'setId'] as const;
const IS_ID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;

function badIds({ thing, id, edit }: Change): ChangeProblem[] {
  const paths = ID_PATHS.filter((path) => at(edit, path) !== null && !IS_ID.test(String(at(edit, path))));
  return [
    ...(IS_ID.test(id) ? [] : [{ thing, id, path: 'id', value: id.slice(0, 80), says: NOT_HERE }]),
    ...paths.map((path) => ({ thing, id, path, value: String(at(edit, path)).slice(0, 80), says: NOT_HERE })),
  ];
}

/**
 * Locks kind by kind, and within a kind by id: everybody does so, a swap too, so nobody waits in a ring. A set that is to
 * hold a motor is locked with the sets.
 */
async function lockedAll(tx: Tx, siteId: string, changes: readonly Change[]): Promise<Map<string, Stands>> {
  const standing = new Map<string, Stands>();
  for (const thing of THINGS) {
    const ids = changes.filter((change) => change.thing === thing).map(({ id }) => id);
    const held = thing !== 'set' ? [] : changes.flatMap(({ edit }) => at(edit, 'setId') ?? []).map(String);
    if (ids.length + held.length === 0) continue;
    const locked = await ALL_THINGS[thing].locked(tx, siteId, [...new Set([...ids, ...held])]);
    for (const id of ids) {
      const stands = locked.get(id);
      if (stands !== undefined) standing.set(id, stands);
    }
  }
  return standing;
}

/** What leaves a place goes before what takes it; what is retired goes from the motor up, what comes from the store down. */
function turnOf({ thing, edit }: Change): number {
  const isRetired = at(edit, 'retiredAt') !== null;
  const leaves = thing === 'motor' && Object.hasOwn(edit, 'setId') && edit.setId === null;
  const step = THINGS.indexOf(thing);
  return isRetired ? -step : leaves ? 1 : 10 + step;
}

async function versionsOf(tx: Tx, siteId: string, made: readonly Change[]): Promise<Map<string, number>> {
  const versions = new Map<string, number>();
  for (const thing of THINGS) {
    const ids = made.filter((change) => change.thing === thing).map(({ id }) => id);
    if (ids.length === 0) continue;
    for (const [id, { version }] of await ALL_THINGS[thing].locked(tx, siteId, ids)) versions.set(id, version);
  }
  return versions;
}
