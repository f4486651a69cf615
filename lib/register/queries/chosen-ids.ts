import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { type MotorFilter, whereMotors } from '../motor-filter';
import { type SetFilter, whereSets } from '../set-filter';

/** As many records as are changed together by hand. */
export const MOST_CHOSEN = 2_000;

export type Chosen =
  | { thing: 'set'; filter: SetFilter; ids: readonly string[] | null }
  | { thing: 'motor'; filter: MotorFilter; ids: readonly string[] | null };

/** The ids of a selection: those named, or all that the filter lets through, as far as the site has them. */
export async function chosenIds(actor: Actor, { thing, filter, ids }: Chosen): Promise<{ ids: string[]; all: number }> {
  must(actor, 'register.read');
  const named = ids === null ? {} : { id: { in: ids.filter((id) => isId(id)).slice(0, MOST_CHOSEN) } };
  const take = MOST_CHOSEN;
  if (thing === 'set') {
    const where = { ...whereSets(actor.siteId, filter), ...named };
    const [rows, all] = await Promise.all([
      db.pumpSet.findMany({ where, orderBy: { tag: 'asc' }, select: { id: true }, take }),
      db.pumpSet.count({ where }),
    ]);
    return { ids: rows.map(({ id }) => id), all };
  }
  const where = { ...whereMotors(actor.siteId, filter), ...named };
  const [rows, all] = await Promise.all([
    db.motor.findMany({ where, orderBy: { plantNumber: 'asc' }, select: { id: true }, take }),
    db.motor.count({ where }),
  ]);
  return { ids: rows.map(({ id }) => id), all };
}
