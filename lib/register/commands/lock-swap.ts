import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import type { Problem } from '@/lib/plant/reading';
import type { SwapRequest } from './swap-request';

export interface LockedMotor {
  id: string;
  plant_number: string;
  place: string;
  set_id: string | null;
  shelf_id: string | null;
}

/**
 * Locks the sets, then the motors, each in the order of their ids: everybody does so in this order, so nobody waits in
 * a ring. NO KEY: a row that only points to one of them need not wait.
 */
export async function lockSwap(
  tx: Tx,
  { siteId }: Actor,
  { setId, motorInId, motorOutId, fromSetId, outTo }: SwapRequest,
) {
  const sets = await tx.$queryRaw<{ id: string; tag: string }[]>`
    SELECT id::text, tag FROM pump_set
    WHERE site_id = ${siteId}::uuid AND retired_at IS NULL AND (id = ${setId}::uuid OR id = ${fromSetId}::uuid)
    ORDER BY id FOR NO KEY UPDATE`;
  const set = sets.find(({ id }) => id === setId);
  if (!set) return unknown('setId', setId);
  if (fromSetId !== null && !sets.some(({ id }) => id === fromSetId)) return unknown('fromSetId', fromSetId);
  const motors = await tx.$queryRaw<LockedMotor[]>`
    SELECT id::text, plant_number, place, set_id::text, shelf_id::text FROM motor
    WHERE site_id = ${siteId}::uuid AND retired_at IS NULL
      AND (id = ${motorInId}::uuid OR id = ${motorOutId}::uuid OR set_id = ${setId}::uuid)
    ORDER BY id FOR NO KEY UPDATE`;
  const motorIn = motors.find(({ id }) => id === motorInId);
  if (!motorIn) return unknown('motorInId', motorInId);
  const motorOut = motors.find(({ id }) => id === motorOutId) ?? null;
  if (motorOutId !== null && !motorOut) return unknown('motorOutId', motorOutId);
  if (outTo?.place === 'on-shelf') {
    const id = outTo.shelfId;
    if ((await tx.shelf.count({ where: { siteId, id, retiredAt: null } })) === 0) return unknown('outTo.shelfId', id);
  }
  // Read anew: while we waited for the lock, the motor in the set may have become another.
  const now = await tx.motor.findFirst({ where: { siteId, setId }, select: { id: true } });
  return { set: { ...set, motorId: now?.id ?? null }, motorIn, motorOut };
}

const unknown = (path: string, value: string): Problem => ({
  path,
  value,
  says: 'is not in the register of this site',
});
