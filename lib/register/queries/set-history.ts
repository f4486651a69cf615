import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { FAULT_LINE, faultLineOf, type HistoryLine, SWAP_LINE, swapLineOf } from '../history-line';
import { changesOf } from './changes-of';

/** What happened at a set, newest first: swaps, faults and what was changed. Also swaps that took its motor elsewhere. */
export async function setHistory(actor: Actor, setId: string, most = 50): Promise<HistoryLine[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const take = Math.min(most, 500);
  const [swaps, faults, changes] = await Promise.all([
    db.swap.findMany({
      where: { siteId, OR: [{ setId }, { fromSetId: setId }] },
      include: SWAP_LINE,
      orderBy: { at: 'desc' },
      take,
    }),
    db.fault.findMany({ where: { siteId, setId }, include: FAULT_LINE, orderBy: { at: 'desc' }, take }),
    changesOf(actor, 'set', setId, ['swap.record', 'fault.report', 'fault.close'], take),
  ]);
  return [...swaps.map(swapLineOf), ...faults.map(faultLineOf), ...changes]
    .sort((a, b) => b.at.getTime() - a.at.getTime())
    .slice(0, take);
}
