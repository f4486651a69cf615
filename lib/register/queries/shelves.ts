import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';

export interface ShelfPlace {
  shelfId: string;
  store: string;
  shelf: string;
}

/** The shelves a motor can be put on, by store and name. */
export async function shelves(actor: Actor): Promise<ShelfPlace[]> {
  must(actor, 'register.read');
  return shelvesIn(db, actor.siteId);
}

/** The same as a step of another query. */
export async function shelvesIn(tx: Tx, siteId: string): Promise<ShelfPlace[]> {
  const rows = await tx.shelf.findMany({
    where: { siteId, retiredAt: null, store: { retiredAt: null } },
    orderBy: [{ store: { name: 'asc' } }, { name: 'asc' }],
    select: { id: true, name: true, store: { select: { name: true } } },
    take: 5_000,
  });
  return rows.map(({ id, name, store }) => ({ shelfId: id, store: store.name, shelf: name }));
}
