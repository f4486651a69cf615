import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

/** The tag of a set; null when the actor's site has none of this id. */
export async function setTag(actor: Actor, id: string): Promise<string | null> {
  must(actor, 'register.read');
  const found = await db.pumpSet.findFirst({ where: { siteId: actor.siteId, id }, select: { tag: true } });
  return found === null ? null : found.tag;
}
