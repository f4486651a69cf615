import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { orderSets, type SetFilter, whereSets } from '../set-filter';
import { SET_LINE, type SetLine, setLineOf } from '../set-line';

export interface ListedSets {
  sets: SetLine[];
  all: number;
}

/** The site's sets that a filter lets through, a page at a time. */
export async function listSets(
  actor: Actor,
  filter: SetFilter,
  { page, perPage }: { page: number; perPage: number },
): Promise<ListedSets> {
  must(actor, 'register.read');
  const where = whereSets(actor.siteId, filter);
  const take = Math.min(perPage, 500);
  const [rows, all] = await Promise.all([
    db.pumpSet.findMany({ where, include: SET_LINE, orderBy: orderSets(filter), skip: (page - 1) * take, take }),
    db.pumpSet.count({ where }),
  ]);
  return { sets: rows.map(setLineOf), all };
}
