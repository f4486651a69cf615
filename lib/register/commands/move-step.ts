import { record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { difference, type State } from '@/lib/fields/state';
import { motorsStanding } from '../things/motor-thing';
import type { Stands } from '../things/thing';
import type { LockedMotor } from './lock-swap';

/** Puts a locked motor into another place and writes it down. The database refuses two places, and a full set. */
export async function moveStep(
  tx: Tx,
  actor: Actor,
  { id }: LockedMotor,
  to: Prisma.MotorUncheckedUpdateInput & { place: string },
): Promise<void> {
  const before = stands(await motorsStanding(tx, actor.siteId, [id]), id);
  await tx.motor.update({ where: { siteId_id: { siteId: actor.siteId, id } }, data: to });
  const differs = difference(before, stands(await motorsStanding(tx, actor.siteId, [id]), id));
  if (differs !== null) await record(tx, actor, { action: 'motor.move', thing: 'motor', thingId: id, ...differs });
}

function stands(standing: Map<string, Stands>, id: string): State {
  const found = standing.get(id);
  if (found === undefined) throw new Error(`A locked motor is gone: ${id}`);
  return found.state;
}
