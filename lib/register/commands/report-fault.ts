import type { z } from 'zod';
import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { SEEN } from '@/lib/plant/fault';
import type { Problem } from '@/lib/plant/reading';
import { read } from '@/lib/plant/reading';
import { type FaultRequest, faultRequest } from './fault-request';
import { refused } from './refused';

export type FaultOutcome =
  | { outcome: 'saved'; faultId: string; isRepeat: boolean }
  | { outcome: 'refused'; problems: Problem[] };

/**
 * Notes that the motor in a set has failed, or the set itself when it holds none, at the server's own moment. It stays
 * open until a swap or a repair closes it. Another may be open already.
 */
export async function reportFault(actor: Actor, asked: z.input<typeof faultRequest>): Promise<FaultOutcome> {
  must(actor, 'fault.report');
  const told = read(faultRequest, asked);
  if (!told.ok) return { outcome: 'refused', problems: told.problems };
  const { key, setId, says, seenAt } = told.value;
  const seen = seenOf(told.value);
  const { siteId, userId } = actor;
  return db.$transaction(async (tx) => {
    const before = await toldBefore(tx, actor, told.value);
    if (before !== null) return before;
    const set = await tx.pumpSet.findFirst({
      where: { siteId, id: setId, retiredAt: null },
      select: { motor: { select: { id: true } } },
    });
    if (!set) return refused('setId', 'is not in the register of this site');
    const { id } = await tx.fault.create({
      data: { siteId, key, setId, motorId: set.motor?.id ?? null, byId: userId, seen, says, seenAt },
      select: { id: true },
    });
    await record(tx, actor, { action: 'fault.report', thing: 'set', thingId: setId, after: { faultId: id } });
    return { outcome: 'saved', faultId: id, isRepeat: false };
  });
}

/** Each once, in the order of the list. */
const seenOf = ({ seen }: FaultRequest) => SEEN.filter((one) => seen.includes(one));

/** Of two sendings of one key the second waits here for the first. */
async function toldBefore(tx: Tx, { siteId }: Actor, told: FaultRequest): Promise<FaultOutcome | null> {
  if (told.key === null) return null;
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${siteId} fault ${told.key}`}, 0))`;
  const before = await tx.fault.findUnique({ where: { siteId_key: { siteId, key: told.key } } });
  if (before === null) return null;
  const isSame = before.setId === told.setId && before.says === told.says && before.seen.join() === seenOf(told).join();
  return isSame
    ? { outcome: 'saved', faultId: before.id, isRepeat: true }
    : refused('key', 'was used before, for a fault that said something else');
}
