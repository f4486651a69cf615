import type { Actor } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import { type Predicted, predictedOf } from '@/lib/job/predicted';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { siteSettings } from '@/lib/plant/site-settings';
import { MOTOR_ROW, motorOfRow } from './motor-row';
import { SET_ROW, setOfRow } from './set-row';

/** The set and the two motors of a swap. */
export interface Swapped {
  setId: string;
  motorInId: string;
  motorOutId: string | null;
}

/** The motor that went in, and the set as it stood before: with the one that came out as the failed one. */
export async function swappedOf(
  tx: Tx,
  { siteId }: Pick<Actor, 'siteId'>,
  { setId, motorInId, motorOutId }: Swapped,
): Promise<{ set: PumpSet; motor: Motor }> {
  const set = await tx.pumpSet.findUniqueOrThrow({ where: { siteId_id: { siteId, id: setId } }, include: SET_ROW });
  const motors = await tx.motor.findMany({
    where: { siteId, id: { in: [motorInId, ...(motorOutId === null ? [] : [motorOutId])] } },
    include: MOTOR_ROW,
  });
  const [motorIn, motorOut] = [motorInId, motorOutId].map((id) => motors.find((motor) => motor.id === id) ?? null);
  if (!motorIn) throw new Error(`The motor ${motorInId} of a swap is not in its register`);
  return { set: { ...setOfRow(set), failed: motorOut ? motorOfRow(motorOut) : null }, motor: motorOfRow(motorIn) };
}

/** What the readings of a swap are held against, by the register as it stands: a figure put right since counts. */
export async function predictedFor(tx: Tx, { siteId }: Pick<Actor, 'siteId'>, swapped: Swapped): Promise<Predicted> {
  const { settings } = await tx.site.findUniqueOrThrow({ where: { id: siteId }, select: { settings: true } });
  const { set, motor } = await swappedOf(tx, { siteId }, swapped);
  return predictedOf(set, motor, { settings: siteSettings.parse(settings), asOf: null });
}
