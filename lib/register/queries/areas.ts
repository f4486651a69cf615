import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

export interface KnownArea {
  areaId: string;
  name: string;
  /** How many sets stand in it. */
  sets: number;
}

/** The site's areas by name, each with its number of sets. */
export async function areas(actor: Actor): Promise<KnownArea[]> {
  must(actor, 'register.read');
  const rows = await db.area.findMany({
    where: { siteId: actor.siteId, retiredAt: null },
    orderBy: { name: 'asc' },
    select: { id: true, name: true, _count: { select: { sets: { where: { retiredAt: null } } } } },
    take: 500,
  });
  return rows.map(({ id, name, _count }) => ({ areaId: id, name, sets: _count.sets }));
}
