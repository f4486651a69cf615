import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { ALL_THINGS } from '../things/all-things';
import type { Stands, ThingName } from '../things/thing';

/** A record with its version, as a form shows it; null when the site has none. */
export async function recordNow(actor: Actor, thing: ThingName, id: string): Promise<Stands | null> {
  must(actor, 'register.read');
  if (!isId(id)) return null;
  return (await ALL_THINGS[thing].standing(db, actor.siteId, [id])).get(id) ?? null;
}
