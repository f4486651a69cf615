import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { FAULT_AT, type FaultAt, faultAtOf } from '../fault-line';
import { isId } from '../is-id';

/** A fault, open or closed; null when the actor's site has none with this id. */
export async function faultById(actor: Actor, faultId: string): Promise<FaultAt | null> {
  must(actor, 'register.read');
  if (!isId(faultId)) return null;
  const row = await db.fault.findUnique({
    where: { siteId_id: { siteId: actor.siteId, id: faultId } },
    include: FAULT_AT,
  });
  return row && faultAtOf(row);
}
