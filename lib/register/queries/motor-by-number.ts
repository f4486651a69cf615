import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Motor } from '@/lib/plant/motor';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import { literal } from '../literal';
import { MOTOR_ROW, type MotorRow, motorOfRow } from '../motor-row';
import { WHEREABOUTS_ROW, whereaboutsOf } from '../whereabouts';

export interface KnownMotor {
  row: MotorRow;
  motor: Motor;
  whereabouts: Whereabouts;
}

/** The motor with this plant number, in any case of letters; null when the actor's site has none. */
export async function motorByNumber(actor: Actor, plantNumber: string): Promise<KnownMotor | null> {
  must(actor, 'register.read');
  const rows = await db.motor.findMany({
    where: { siteId: actor.siteId, plantNumber: { equals: literal(plantNumber.trim()), mode: 'insensitive' } },
    include: { ...MOTOR_ROW, ...WHEREABOUTS_ROW },
    take: 10,
  });
  const found = rows.find((row) => row.plantNumber === plantNumber.trim()) ?? rows[0];
  return found ? { row: found, motor: motorOfRow(found), whereabouts: whereaboutsOf(found) } : null;
}
