import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { FAULT_LINE, faultLineOf, type HistoryLine, SWAP_LINE, swapLineOf } from '../history-line';
import { changesOf } from './changes-of';

/** What happened to a motor, newest first: swaps in and out, faults and what was changed. */
export async function motorHistory(actor: Actor, motorId: string, most = 50): Promise<HistoryLine[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const take = Math.min(most, 500);
  const [swaps, faults, changes] = await Promise.all([
    db.swap.findMany({
      where: { siteId, OR: [{ motorInId: motorId }, { motorOutId: motorId }] },
      include: SWAP_LINE,
      orderBy: { at: 'desc' },
      take,
    }),
    db.fault.findMany({ where: { siteId, motorId }, include: FAULT_LINE, orderBy: { at: 'desc' }, take }),
    changesOf(actor, 'motor', motorId, [], take),
  ]);
  return [...swaps.map(swapLineOf), ...faults.map(faultLineOf), ...changes]
    .sort((a, b) => b.at.getTime() - a.at.getTime())
    .slice(0, take);
}
