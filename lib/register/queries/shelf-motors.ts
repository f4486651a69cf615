import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Motor } from '@/lib/plant/motor';
import type { Whereabouts } from '@/lib/plant/whereabouts';
import { MOTOR_ROW, motorOfRow } from '../motor-row';
import { WHEREABOUTS_ROW, whereaboutsOf } from '../whereabouts';

/** As many as one list is made of; `isAll` is false when the site has more. */
const MOST = 5_000;

export interface OfferedMotor {
  motor: Motor;
  version: number;
  whereabouts: Whereabouts;
  maker: string | null;
  condition: string | null;
  rewinds: number | null;
}

/** Every motor of the site that waits for a set: on a shelf, or on order. What is at repair is not offered. */
export async function shelfMotors(actor: Actor): Promise<{ offered: OfferedMotor[]; isAll: boolean }> {
  must(actor, 'register.read');
  const rows = await db.motor.findMany({
    where: { siteId: actor.siteId, place: { in: ['on-shelf', 'on-order'] }, retiredAt: null },
    include: { ...MOTOR_ROW, ...WHEREABOUTS_ROW },
    orderBy: { plantNumber: 'asc' },
    take: MOST + 1,
  });
  return {
    offered: rows.slice(0, MOST).map((row) => ({
      motor: motorOfRow(row),
      version: row.version,
      whereabouts: whereaboutsOf(row),
      maker: row.maker,
      condition: row.condition,
      rewinds: row.rewinds,
    })),
    isAll: rows.length <= MOST,
  };
}
