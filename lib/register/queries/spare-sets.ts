import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isSparable, type Stops } from '@/lib/matching/offer/candidate';
import type { Motor } from '@/lib/plant/motor';
import { MOTOR_ROW, motorOfRow } from '../motor-row';

const MOST = 5_000;

/** A running motor that could be spared, and the set that would stop for it. */
export interface SparableMotor {
  motor: Motor;
  version: number;
  stops: Stops;
}

/**
 * The motors standing in less critical sets than this one. None when nobody said how critical this set is: what is
 * not known to be less critical is not taken from.
 */
export async function spareSets(actor: Actor, setId: string): Promise<SparableMotor[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const asking = await db.pumpSet.findUnique({
    where: { siteId_id: { siteId, id: setId } },
    select: { criticality: true },
  });
  if (!asking || asking.criticality === null) return [];
  const rows = await db.motor.findMany({
    where: { siteId, place: 'in-set', set: { criticality: { gt: asking.criticality }, retiredAt: null } },
    include: { ...MOTOR_ROW, set: { select: { id: true, tag: true, service: true, criticality: true } } },
    orderBy: [{ set: { criticality: 'desc' } }, { plantNumber: 'asc' }],
    take: MOST,
  });
  return rows.flatMap(({ set, ...row }) =>
    set === null || !isSparable(asking.criticality, set.criticality)
      ? []
      : [
          {
            motor: motorOfRow(row),
            version: row.version,
            stops: { setId: set.id, tag: set.tag, service: set.service, criticality: set.criticality },
          },
        ],
  );
}
