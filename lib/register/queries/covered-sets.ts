import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { CoveredSet } from '@/lib/spares/cover-lost';
import { SET_ROW, setOfRow } from '../set-row';

/** As many sets as one answer looks at; the most critical first. */
const MOST = 5_000;

/** The sets in use as their cover is asked; `isAll` is false when the site has more. */
export async function coveredSets(actor: Actor): Promise<{ sets: CoveredSet[]; isAll: boolean }> {
  must(actor, 'register.read');
  const rows = await db.pumpSet.findMany({
    where: { siteId: actor.siteId, retiredAt: null },
    include: SET_ROW,
    orderBy: [{ criticality: { sort: 'asc', nulls: 'last' } }, { tag: 'asc' }],
    take: MOST + 1,
  });
  return {
    sets: rows.slice(0, MOST).map((row) => ({
      ...{ setId: row.id, service: row.service, criticality: row.criticality },
      set: setOfRow(row),
    })),
    isAll: rows.length <= MOST,
  };
}
