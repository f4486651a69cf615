import type { Tx } from '@/lib/db/client';
import { doubtsOfSite } from '@/lib/plausibility/doubts-of-site';
import { MOTOR_ROW, type MotorRow } from '../motor-row';
import { SET_ROW, type SetRow } from '../set-row';
import type { FoundDoubt } from './found-doubt';
import { doubtsOfMotorRow, doubtsOfSetRow } from './kept-doubts';
import { motorsAlike } from './site-motors';

/** The doubts of one record of the site as it stands; none where there is no such record, or it is retired. */
export async function thingDoubts(tx: Tx, siteId: string, thing: 'set' | 'motor', id: string): Promise<FoundDoubt[]> {
  if (thing === 'set') {
    const row = await tx.pumpSet.findFirst({ where: { siteId, id, retiredAt: null }, include: SET_ROW });
    return row === null ? [] : doubtsOfThisSet(row);
  }
  const row = await tx.motor.findFirst({ where: { siteId, id, retiredAt: null }, include: MOTOR_ROW });
  return row === null ? [] : doubtsOfThisMotor(tx, row);
}

export const doubtsOfThisSet = (row: SetRow): FoundDoubt[] =>
  doubtsOfSetRow(row).map((doubt) => ({ thing: 'set', thingId: row.id, name: row.tag, doubt }));

/** Of its plate, and among the motors it could be one with. */
export async function doubtsOfThisMotor(tx: Tx, row: MotorRow): Promise<FoundDoubt[]> {
  const among = doubtsOfSite(await motorsAlike(tx, row.siteId, row));
  const own = among.filter(({ id }) => id === row.id).map(({ doubt }) => doubt);
  return [...doubtsOfMotorRow(row), ...own].map((doubt) => ({
    thing: 'motor',
    thingId: row.id,
    name: row.plantNumber,
    doubt,
  }));
}
