import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';

/** The site's areas in use behind a name, in the order of their names, with their surroundings. */
export async function areasAfter(actor: Actor, after: string | null, take: number) {
  must(actor, 'register.read');
  return db.area.findMany({ ...behind(actor, after, take), select: AREA });
}

/** The site's stores in use behind a name, in the order of their names. */
export async function storesAfter(actor: Actor, after: string | null, take: number) {
  must(actor, 'register.read');
  return db.store.findMany({ ...behind(actor, after, take), select: STORE });
}

/** The site's shelves in use behind a store's and a shelf's name, in that order. */
export async function shelvesAfter(actor: Actor, after: readonly [store: string, shelf: string] | null, take: number) {
  must(actor, 'register.read');
  const rows = await db.shelf.findMany({
    where: {
      ...{ siteId: actor.siteId, retiredAt: null, store: { retiredAt: null } },
      ...(after !== null && {
        OR: [{ store: { name: { gt: after[0] } } }, { store: { name: after[0] }, name: { gt: after[1] } }],
      }),
    },
    orderBy: [{ store: { name: 'asc' } }, { name: 'asc' }],
    select: SHELF,
    take: Math.min(take, MOST),
  });
  return rows.map(shelfOf);
}

/** An area, a store and a shelf that are known to be there. */
export async function areaKnown(tx: Tx, actor: Actor, id: string) {
  must(actor, 'register.read');
  return tx.area.findUniqueOrThrow({ where: { siteId_id: { siteId: actor.siteId, id } }, select: AREA });
}
export async function storeKnown(tx: Tx, actor: Actor, id: string) {
  must(actor, 'register.read');
  return tx.store.findUniqueOrThrow({ where: { siteId_id: { siteId: actor.siteId, id } }, select: STORE });
}
export async function shelfKnown(tx: Tx, actor: Actor, id: string) {
  must(actor, 'register.read');
  const where = { siteId_id: { siteId: actor.siteId, id } };
  return shelfOf(await tx.shelf.findUniqueOrThrow({ where, select: SHELF }));
}

const MOST = 500;
const behind = ({ siteId }: Actor, after: string | null, take: number) => ({
  where: { siteId, retiredAt: null, ...(after !== null && { name: { gt: after } }) },
  orderBy: { name: 'asc' as const },
  take: Math.min(take, MOST),
});

const AREA = { id: true, name: true, surroundings: true } as const;
const STORE = { id: true, name: true } as const;
const SHELF = { id: true, name: true, storeId: true, store: { select: { name: true } } } as const;
const shelfOf = ({
  id,
  name,
  storeId,
  store,
}: {
  id: string;
  name: string;
  storeId: string;
  store: { name: string };
}) => ({
  ...{ id, name, storeId },
  store: store.name,
});
