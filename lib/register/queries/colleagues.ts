import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

/** Everybody of the site by name, those who left too: to choose whose changes are meant. */
export async function colleagues(actor: Actor): Promise<{ userId: string; name: string }[]> {
  must(actor, 'audit.read');
  const rows = await db.user.findMany({
    where: { siteId: actor.siteId },
    select: { id: true, name: true },
    orderBy: { name: 'asc' },
    take: 2_000,
  });
  return rows.map(({ id, name }) => ({ userId: id, name }));
}
