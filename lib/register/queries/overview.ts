import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Place } from '@/lib/plant/whereabouts';
import { known } from '../whereabouts';

export interface Overview {
  sets: number;
  setsWithoutMotor: number;
  openFaults: number;
  /** How many motors are where; a place with none is not named. */
  motors: Partial<Record<Place, number>>;
  swapsInThirtyDays: number;
}

/** How many of what the site has. */
export async function overview(actor: Actor): Promise<Overview> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const since = new Date(Date.now() - 30 * 24 * 3_600_000);
  const [sets, setsWithoutMotor, openFaults, places, swapsInThirtyDays] = await Promise.all([
    db.pumpSet.count({ where: { siteId, retiredAt: null } }),
    db.pumpSet.count({ where: { siteId, retiredAt: null, motor: null } }),
    db.fault.count({ where: { siteId, closedAt: null } }),
    db.motor.groupBy({ by: ['place'], where: { siteId, retiredAt: null }, _count: true }),
    db.swap.count({ where: { siteId, at: { gte: since } } }),
  ]);
  const motors = Object.fromEntries(places.map(({ place, _count }) => [known(place), _count]));
  return { sets, setsWithoutMotor, openFaults, motors, swapsInThirtyDays };
}
