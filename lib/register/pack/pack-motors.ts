import type { Tx } from '@/lib/db/client';
import type { PackMotor } from '@/lib/offline/pack';
import { labelCodeOf } from '../label-code-of';
import { MOTOR_ROW, motorOfRow } from '../motor-row';
import { known } from '../whereabouts';

/** Motors as a phone keeps them, in the order of their ids. */
export async function packMotors(tx: Tx, siteId: string, ids: readonly string[]): Promise<PackMotor[]> {
  if (ids.length === 0) return [];
  const rows = await tx.motor.findMany({
    where: { siteId, id: { in: [...ids] } },
    include: { ...MOTOR_ROW, shelf: { select: { name: true, store: { select: { name: true } } } } },
    orderBy: { id: 'asc' },
  });
  return rows.map((row) => {
    const { id, plantNumber, maker, serial, condition, rewinds, place, setId, shelfId, shelf, retiredAt } = row;
    return {
      ...{ id, number: plantNumber, code: labelCodeOf(row), maker, serial, condition, rewinds, setId, shelfId },
      place: known(place),
      store: shelf?.store.name ?? null,
      shelf: shelf?.name ?? null,
      motor: motorOfRow(row),
      retired: retiredAt !== null,
    };
  });
}
