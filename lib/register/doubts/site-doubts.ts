import { db } from '@/lib/db/client';
import type { Doubt } from '@/lib/plausibility/doubt';
import { doubtsOfSite } from '@/lib/plausibility/doubts-of-site';
import { MOTOR_ROW } from '../motor-row';
import { SET_ROW } from '../set-row';
import type { FoundDoubt } from './found-doubt';
import { doubtsKept, doubtsOfMotorRow, doubtsOfSetRow, keyOfMotor, keyOfSet } from './kept-doubts';
import { SITE_MOTOR_ROW, siteMotorOf } from './site-motors';

/** As many records of each kind as are looked at; `isAll` is false when the site has more. */
const MOST = 20_000;
/** Rows read whole at a time. */
const PART = 500;

/**
 * Every doubt of a site, sets first, each kind by its name. Only what changed since the last look is read whole and judged;
 * of the rest id and version are enough.
 */
export async function siteDoubts(siteId: string): Promise<{ found: FoundDoubt[]; isAll: boolean }> {
  const [motors, sets] = await Promise.all([
    db.motor.findMany({
      where: { siteId, retiredAt: null },
      select: SITE_MOTOR_ROW,
      orderBy: { plantNumber: 'asc' },
      take: MOST + 1,
    }),
    db.pumpSet.findMany({
      where: { siteId, retiredAt: null },
      select: {
        ...{ id: true, version: true, tag: true },
        supply: { select: { version: true } },
        motor: { select: { id: true, version: true } },
      },
      orderBy: { tag: 'asc' },
      take: MOST + 1,
    }),
  ]);
  const isAll = motors.length <= MOST && sets.length <= MOST;
  const ofMotors = motors.slice(0, MOST);
  const ofSets = sets.slice(0, MOST);

  const newMotors = ofMotors.filter((one) => doubtsKept(keyOfMotor(siteId, one)) === null);
  const byMotor = await judged(newMotors, async (ids) => {
    const rows = await db.motor.findMany({ where: { siteId, id: { in: ids } }, include: MOTOR_ROW });
    return rows.map((row) => [row.id, doubtsOfMotorRow(row)]);
  });
  const newSets = ofSets.filter((one) => doubtsKept(keyOfSet(siteId, one)) === null);
  const bySet = await judged(newSets, async (ids) => {
    const rows = await db.pumpSet.findMany({ where: { siteId, id: { in: ids } }, include: SET_ROW });
    return rows.map((row) => [row.id, doubtsOfSetRow(row)]);
  });

  const amongEachOther = new Map<string, Doubt[]>();
  for (const { id, doubt } of doubtsOfSite(ofMotors.map(siteMotorOf)))
    amongEachOther.set(id, [...(amongEachOther.get(id) ?? []), doubt]);
  const found: FoundDoubt[] = [];
  for (const one of ofSets)
    for (const doubt of bySet.get(one.id) ?? doubtsKept(keyOfSet(siteId, one)) ?? [])
      found.push({ thing: 'set', thingId: one.id, name: one.tag, doubt });
  for (const one of ofMotors) {
    const own = byMotor.get(one.id) ?? doubtsKept(keyOfMotor(siteId, one)) ?? [];
    for (const doubt of [...own, ...(amongEachOther.get(one.id) ?? [])])
      found.push({ thing: 'motor', thingId: one.id, name: one.plantNumber, doubt });
  }
  return { found, isAll };
}

type Judged = [id: string, doubts: readonly Doubt[]];

/** Reads and judges a part at a time. */
async function judged(
  heads: readonly { id: string }[],
  read: (ids: string[]) => Promise<Judged[]>,
): Promise<Map<string, Judged[1]>> {
  const all = new Map<string, Judged[1]>();
  for (let from = 0; from < heads.length; from += PART) {
    const part = await read(heads.slice(from, from + PART).map(({ id }) => id));
    for (const [id, doubts] of part) all.set(id, doubts);
  }
  return all;
}
