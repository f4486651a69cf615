import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

/** The plant number of a motor; null when the actor's site has none of this id. */
export async function motorNumber(actor: Actor, id: string): Promise<string | null> {
  must(actor, 'register.read');
  const found = await db.motor.findFirst({ where: { siteId: actor.siteId, id }, select: { plantNumber: true } });
  return found === null ? null : found.plantNumber;
}
