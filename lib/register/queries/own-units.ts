import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Units } from '@/lib/fields/field';

/** The system of units in which the person asking reads and types; metric until they say otherwise. */
export async function ownUnits(actor: Actor): Promise<Units> {
  must(actor, 'register.read');
  const { userId, siteId } = actor;
  const user = await db.user.findFirst({ where: { id: userId, siteId }, select: { units: true } });
  return user?.units === 'us' ? 'us' : 'metric';
}
