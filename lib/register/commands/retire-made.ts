import { type Entry, record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import { difference, type Edit, edited } from '@/lib/fields/state';
import { ALL_THINGS } from '../things/all-things';
import { THINGS, type ThingName } from '../things/thing';
import type { ChangeProblem } from './change-step';
import { parts } from './parts';

/**
 * Retires what a change made, motors first and stores last, many rows a statement. Empty when all of it is retired, or
 * the problems of what cannot be.
 */
export async function retireMade(
  tx: Tx,
  by: Actor & { changeId: string },
  made: readonly { thing: ThingName; id: string }[],
): Promise<ChangeProblem[]> {
  const retiredAt = new Date();
  for (const thing of THINGS.toReversed())
    for (const part of parts(made.filter((one) => one.thing === thing).map(({ id }) => id))) {
      const stuck = await inUse(tx, by.siteId, thing, part);
      if (stuck.length > 0)
        return stuck.map((id) => ({ thing, id, path: 'retiredAt', value: null, says: `cannot be: ${USED[thing]}` }));
      const standing = await ALL_THINGS[thing].locked(tx, by.siteId, part);
      await retire(tx, by.siteId, thing, part, retiredAt);
      const edit: Edit = { ...(thing === 'motor' && AWAY), retiredAt: retiredAt.toISOString() };
      await record(
        tx,
        by,
        ...[...standing].map(([id, { state }]): Entry => {
          const differs = difference(state, edited(state, edit)) ?? { before: {}, after: {} };
          return { action: `${thing}.change`, thing, thingId: id, ...differs, note: 'undone' };
        }),
      );
    }
  return [];
}

const AWAY: Edit = { place: 'scrapped', setId: null, shelfId: null };

const USED: Readonly<Record<ThingName, string>> = {
  area: 'a set stands in it',
  store: 'a shelf stands in it',
  shelf: 'a motor stands on it',
  set: 'a motor is in it',
  motor: 'it is in use',
};

/** Those among `ids` that something in use still needs. */
async function inUse(tx: Tx, siteId: string, thing: ThingName, ids: readonly string[]): Promise<string[]> {
  const where = { siteId, retiredAt: null };
  const within = { in: [...ids] };
  switch (thing) {
    case 'motor':
      return [];
    case 'set': {
      const rows = await tx.motor.findMany({ where: { siteId, setId: within }, select: { setId: true } });
      return rows.flatMap(({ setId }) => setId ?? []);
    }
    case 'shelf': {
      const rows = await tx.motor.findMany({ where: { siteId, shelfId: within }, select: { shelfId: true } });
      return rows.flatMap(({ shelfId }) => shelfId ?? []);
    }
    case 'store':
      return (await tx.shelf.findMany({ where: { ...where, storeId: within }, select: { storeId: true } })).map(
        ({ storeId }) => storeId,
      );
    case 'area':
      return (await tx.pumpSet.findMany({ where: { ...where, areaId: within }, select: { areaId: true } })).flatMap(
        ({ areaId }) => areaId ?? [],
      );
  }
}

async function retire(tx: Tx, siteId: string, thing: ThingName, ids: readonly string[], retiredAt: Date) {
  const where = { siteId, id: { in: [...ids] } };
  switch (thing) {
    case 'motor':
      return tx.motor.updateMany({
        where,
        data: { retiredAt, place: 'scrapped', setId: null, shelfId: null, changedAt: retiredAt },
      });
    case 'set':
      return tx.pumpSet.updateMany({ where, data: { retiredAt, changedAt: retiredAt } });
    case 'shelf':
      return tx.shelf.updateMany({ where, data: { retiredAt } });
    case 'store':
      return tx.store.updateMany({ where, data: { retiredAt } });
    case 'area':
      return tx.area.updateMany({ where, data: { retiredAt } });
  }
}
