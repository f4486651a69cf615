import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import type { LockedMotor } from './lock-swap';
import { moveStep } from './move-step';
import { type Refused, refused } from './refused';
import { endRepairStep } from './repair-step';

/** A motor at repair is back on a shelf, or is scrapped after all. */
export async function endRepair(
  actor: Actor,
  { motorId, to }: { motorId: string; to: { place: 'on-shelf'; shelfId: string } | { place: 'scrapped' } },
): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'motor.move');
  const { siteId } = actor;
  if (!isId(motorId)) return refused('motorId', 'is not in the register of this site');
  const shelfId = to.place === 'on-shelf' ? to.shelfId : null;
  if (shelfId !== null && !isId(shelfId)) return refused('to', 'is not one of the shelves');
  return db.$transaction(async (tx) => {
    const [motor] = await tx.$queryRaw<LockedMotor[]>`
      SELECT id::text, plant_number, place, set_id::text, shelf_id::text FROM motor
      WHERE site_id = ${siteId}::uuid AND id = ${motorId}::uuid AND retired_at IS NULL FOR NO KEY UPDATE`;
    if (motor === undefined) return refused('motorId', 'is not in the register of this site');
    if (motor.place !== 'at-repair') return refused('motorId', 'is not at repair any more');
    if (shelfId !== null && (await tx.shelf.count({ where: { siteId, id: shelfId, retiredAt: null } })) === 0)
      return refused('to', 'is not one of the shelves');
    const shelvedOn = shelfId === null ? null : new Date();
    await moveStep(tx, actor, motor, { place: to.place, setId: null, shelfId, shelvedOn });
    await endRepairStep(tx, actor, motorId);
    return { outcome: 'saved' };
  });
}
