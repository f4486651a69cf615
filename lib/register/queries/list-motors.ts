import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Motor } from '@/lib/plant/motor';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import { type MotorFilter, orderMotors, whereMotors } from '../motor-filter';
import { MOTOR_ROW, motorOfRow } from '../motor-row';
import { WHEREABOUTS_ROW, whereaboutsOf } from '../whereabouts';

export interface MotorLine {
  motorId: string;
  motor: Motor;
  maker: string | null;
  serial: string | null;
  whereabouts: Whereabouts;
  changedAt: Date;
}

/** The site's motors that a filter lets through, a page at a time. */
export async function listMotors(
  actor: Actor,
  filter: MotorFilter,
  { page, perPage }: { page: number; perPage: number },
): Promise<{ motors: MotorLine[]; all: number }> {
  must(actor, 'register.read');
  const where = whereMotors(actor.siteId, filter);
  const take = Math.min(perPage, 500);
  const [rows, all] = await Promise.all([
    db.motor.findMany({
      where,
      include: { ...MOTOR_ROW, ...WHEREABOUTS_ROW },
      orderBy: orderMotors(filter),
      skip: (page - 1) * take,
      take,
    }),
    db.motor.count({ where }),
  ]);
  const motors = rows.map((row) => ({
    motorId: row.id,
    motor: motorOfRow(row),
    maker: row.maker,
    serial: row.serial,
    whereabouts: whereaboutsOf(row),
    changedAt: row.changedAt,
  }));
  return { motors, all };
}
