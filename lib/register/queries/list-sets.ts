import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { SET_LINE, type SetLine, setLineOf } from '../set-line';

export interface ListedSets {
  sets: SetLine[];
  all: number;
}

/** The site's sets by tag, a page at a time; `areaId` null: of every area. */
export async function listSets(
  actor: Actor,
  { areaId, page, perPage }: { areaId: string | null; page: number; perPage: number },
): Promise<ListedSets> {
  must(actor, 'register.read');
  const where = { siteId: actor.siteId, retiredAt: null, ...(areaId !== null && { areaId }) };
  const take = Math.min(perPage, 500);
  const [rows, all] = await Promise.all([
    db.pumpSet.findMany({ where, include: SET_LINE, orderBy: { tag: 'asc' }, skip: (page - 1) * take, take }),
    db.pumpSet.count({ where }),
  ]);
  return { sets: rows.map(setLineOf), all };
}
