import { record } from '@/lib/audit/record';
import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import type { LockedMotor } from './lock-swap';

/** Puts a locked motor into another place and writes it down. The database refuses two places, and a full set. */
export async function moveStep(
  tx: Tx,
  actor: Actor,
  motor: LockedMotor,
  to: Prisma.MotorUncheckedUpdateInput & { place: string },
): Promise<void> {
  const { id, place, set_id, shelf_id } = motor;
  const now = await tx.motor.update({ where: { siteId_id: { siteId: actor.siteId, id } }, data: to });
  await record(tx, actor, {
    action: 'motor.move',
    thing: 'motor',
    thingId: id,
    before: { place, setId: set_id, shelfId: shelf_id },
    after: { place: now.place, setId: now.setId, shelfId: now.shelfId },
  });
}
