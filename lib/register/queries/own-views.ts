import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

/** The questions that this person keeps for a list. */
export async function ownViews(actor: Actor, page: string): Promise<{ id: string; name: string; query: string }[]> {
  must(actor, 'register.read');
  const { siteId, userId } = actor;
  return db.savedView.findMany({
    where: { siteId, userId, page },
    orderBy: { name: 'asc' },
    select: { id: true, name: true, query: true },
    take: 50,
  });
}
