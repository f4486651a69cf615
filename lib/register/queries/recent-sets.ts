import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { SET_LINE, type SetLine, setLineOf } from '../set-line';

/** What a technician most likely came for: the sets with an open fault, newest first, then those changed last. */
export async function recentSets(actor: Actor, most = 12): Promise<SetLine[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const take = Math.min(most, 50);
  const faults = await db.fault.findMany({
    where: { siteId, closedAt: null, set: { retiredAt: null } },
    orderBy: { at: 'desc' },
    distinct: ['setId'],
    take,
    select: { set: { include: SET_LINE } },
  });
  const failed = faults.map(({ set }) => set);
  const changed = await db.pumpSet.findMany({
    where: { siteId, retiredAt: null, id: { notIn: failed.map(({ id }) => id) } },
    orderBy: [{ changedAt: 'desc' }, { tag: 'asc' }],
    take: take - failed.length,
    include: SET_LINE,
  });
  return [...failed, ...changed].map(setLineOf);
}
