import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { triedAgain } from '@/lib/db/tried-again';
import { type State, stateOf } from '@/lib/fields/state';
import type { Problem } from '@/lib/plant/reading';
import { ALL_THINGS } from '../things/all-things';
import type { ThingName } from '../things/thing';

export type RegisteredPlace =
  | { outcome: 'saved'; changeId: string; id: string }
  | { outcome: 'refused'; problems: Problem[] };

/** Adds an area with its surroundings. */
export const registerArea = (actor: Actor, told: object): Promise<RegisteredPlace> =>
  registering((tx) => registerAreaIn(tx, actor, told));

/** The same in a transaction that does more besides; so with stores and shelves. */
export function registerAreaIn(tx: Tx, actor: Actor, told: object): Promise<RegisteredPlace> {
  must(actor, 'set.edit');
  return registerPlaceIn(tx, actor, 'area', stateOf(told));
}

/** Adds a store. */
export const registerStore = (actor: Actor, name: string): Promise<RegisteredPlace> =>
  registering((tx) => registerStoreIn(tx, actor, name));

export function registerStoreIn(tx: Tx, actor: Actor, name: string): Promise<RegisteredPlace> {
  must(actor, 'set.edit');
  return registerPlaceIn(tx, actor, 'store', stateOf({ name }));
}

/** Adds a shelf to a store. */
export const registerShelf = (actor: Actor, storeId: string, name: string): Promise<RegisteredPlace> =>
  registering((tx) => registerShelfIn(tx, actor, storeId, name));

export function registerShelfIn(tx: Tx, actor: Actor, storeId: string, name: string): Promise<RegisteredPlace> {
  must(actor, 'set.edit');
  return registerPlaceIn(tx, actor, 'shelf', stateOf({ name, storeId }));
}

const registering = (work: (tx: Tx) => Promise<RegisteredPlace>): Promise<RegisteredPlace> =>
  triedAgain(() => db.$transaction(work));

async function registerPlaceIn(
  tx: Tx,
  actor: Actor,
  thing: Extract<ThingName, 'area' | 'store' | 'shelf'>,
  state: State,
): Promise<RegisteredPlace> {
  const { siteId } = actor;
  const id = randomUUID();
  const changeId = randomUUID();
  const problems = await ALL_THINGS[thing].problems(tx, siteId, id, state);
  if (problems.length > 0) return { outcome: 'refused', problems };
  const name = String(state.name);
  if (thing === 'area') await tx.area.create({ data: { siteId, id, name } });
  else if (thing === 'store') await tx.store.create({ data: { siteId, id, name } });
  else await tx.shelf.create({ data: { siteId, id, name, storeId: String(state.storeId) } });
  await ALL_THINGS[thing].write(tx, siteId, id, state);
  await record(tx, { ...actor, changeId }, { action: `${thing}.register`, thing, thingId: id, after: state });
  return { outcome: 'saved', changeId, id };
}
