import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

/** The swap that was recorded under a key; null when the actor's site has none. */
export async function swapOfKey(actor: Actor, key: string): Promise<string | null> {
  must(actor, 'register.read');
  const swap = await db.swap.findUnique({ where: { siteId_key: { siteId: actor.siteId, key } }, select: { id: true } });
  return swap === null ? null : swap.id;
}
