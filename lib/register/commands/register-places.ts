import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { stateOf } from '@/lib/fields/state';
import { type PumpSetInput, set } from '@/lib/plant/set';
import { surroundingsTold } from './surroundings-told';

export interface NewPlaces {
  areas: { name: string; surroundings?: PumpSetInput['surroundings'] }[];
  stores: { name: string; shelves: string[] }[];
}

export interface RegisteredPlaces {
  /** Area name to its id. */
  areas: Map<string, string>;
  /** "store / shelf" to the shelf's id. */
  shelves: Map<string, string>;
}

/** Adds areas with their surroundings, stores and shelves, all or none. Throws on a name that is there already. */
export async function registerPlaces(actor: Actor, { areas, stores }: NewPlaces): Promise<RegisteredPlaces> {
  must(actor, 'set.edit');
  const { siteId } = actor;
  const madeAreas = areas.map(({ name, surroundings }) => {
    if (surroundings) set.shape.surroundings.parse(surroundings);
    return { siteId, id: randomUUID() as string, name, surroundings: surroundingsTold(surroundings) };
  });
  const madeStores = stores.map(({ name, shelves }) => ({ id: randomUUID() as string, name, shelves }));
  const madeShelves = madeStores.flatMap((store) =>
    store.shelves.map((name) => ({
      row: { siteId, id: randomUUID() as string, storeId: store.id, name },
      key: `${store.name} / ${name}`,
    })),
  );
  await db.$transaction(async (tx) => {
    await tx.area.createMany({ data: madeAreas });
    await tx.store.createMany({ data: madeStores.map(({ id, name }) => ({ siteId, id, name })) });
    await tx.shelf.createMany({ data: madeShelves.map(({ row }) => row) });
    await record(
      tx,
      { ...actor, changeId: randomUUID() },
      ...madeAreas.map(({ id, name, surroundings }) => made('area', id, { name, surroundings })),
      ...madeStores.map(({ id, name }) => made('store', id, { name })),
      ...madeShelves.map(({ row: { id, name, storeId } }) => made('shelf', id, { name, storeId })),
    );
  });
  return {
    areas: new Map(madeAreas.map(({ name, id }) => [name, id])),
    shelves: new Map(madeShelves.map(({ key, row }) => [key, row.id])),
  };
}

const made = (thing: 'area' | 'store' | 'shelf', thingId: string, told: object) => ({
  action: `${thing}.register`,
  thing,
  thingId,
  after: stateOf(told),
});
