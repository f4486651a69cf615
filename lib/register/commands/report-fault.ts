import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Problem } from '@/lib/plant/reading';

export type FaultOutcome = { outcome: 'saved'; faultId: string } | { outcome: 'refused'; problems: Problem[] };

/** Notes that the motor in a set has failed, or the set itself when it holds none. */
export async function reportFault(actor: Actor, setId: string, says: string): Promise<FaultOutcome> {
  must(actor, 'fault.report');
  const { siteId, userId } = actor;
  const words = says.trim();
  if (words === '' || words.length > 2_000)
    return { outcome: 'refused', problems: [{ path: 'says', value: null, says: 'must have 1 to 2,000 characters' }] };
  return db.$transaction(async (tx) => {
    const set = await tx.pumpSet.findFirst({
      where: { siteId, id: setId, retiredAt: null },
      select: { motor: { select: { id: true } } },
    });
    if (!set)
      return {
        outcome: 'refused',
        problems: [{ path: 'setId', value: setId, says: 'is not in the register of this site' }],
      };
    const { id } = await tx.fault.create({
      data: { siteId, setId, motorId: set.motor?.id ?? null, byId: userId, says: words },
      select: { id: true },
    });
    await record(tx, actor, { action: 'fault.report', thing: 'set', thingId: setId, after: { faultId: id } });
    return { outcome: 'saved', faultId: id };
  });
}
