import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

export interface KnownStore {
  storeId: string;
  name: string;
  shelves: { shelfId: string; name: string; motors: number }[];
}

/** The site's stores with their shelves, each with the number of motors on it. */
export async function storePlaces(actor: Actor): Promise<KnownStore[]> {
  must(actor, 'register.read');
  const rows = await db.store.findMany({
    where: { siteId: actor.siteId, retiredAt: null },
    orderBy: { name: 'asc' },
    select: {
      id: true,
      name: true,
      shelves: {
        where: { retiredAt: null },
        orderBy: { name: 'asc' },
        select: { id: true, name: true, _count: { select: { motors: true } } },
        take: 2_000,
      },
    },
    take: 200,
  });
  return rows.map(({ id, name, shelves }) => ({
    storeId: id,
    name,
    shelves: shelves.map((shelf) => ({ shelfId: shelf.id, name: shelf.name, motors: shelf._count.motors })),
  }));
}
