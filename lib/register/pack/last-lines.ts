import type { Tx } from '@/lib/db/client';
import { VERDICTS } from '@/lib/matching/verdict';
import type { PackLine } from '@/lib/offline/pack';
import { FAULT_LINE, faultLineOf, SWAP_LINE, swapLineOf } from '../history-line';

const MOST = 8;

/** The last swaps and faults of each set, newest first; also the swaps that took its motor elsewhere. */
export async function lastLines(tx: Tx, siteId: string, setIds: readonly string[]): Promise<Map<string, PackLine[]>> {
  const found = await tx.$queryRaw<{ setId: string; id: string }[]>`
    SELECT s.id::text AS "setId", l.id::text FROM unnest(${[...setIds]}::uuid[]) AS s (id)
    CROSS JOIN LATERAL (
      (SELECT id, at FROM swap WHERE site_id = ${siteId}::uuid AND set_id = s.id ORDER BY at DESC, id LIMIT ${MOST})
      UNION ALL
      (SELECT id, at FROM swap WHERE site_id = ${siteId}::uuid AND from_set_id = s.id ORDER BY at DESC, id LIMIT ${MOST})
      UNION ALL
      (SELECT id, at FROM fault WHERE site_id = ${siteId}::uuid AND set_id = s.id ORDER BY at DESC, id LIMIT ${MOST})
      ORDER BY at DESC, id LIMIT ${MOST}) AS l
    ORDER BY l.at DESC, l.id`;
  const where = { siteId, id: { in: [...new Set(found.map(({ id }) => id))] } };
  const swaps = await tx.swap.findMany({ where, include: SWAP_LINE });
  const faults = await tx.fault.findMany({ where, include: FAULT_LINE });
  const lines = new Map<string, PackLine>([
    ...swaps.map((row): [string, PackLine] => {
      const { swapId, at, verdict, ...line } = swapLineOf(row);
      return [swapId, { ...line, id: swapId, at: at.toISOString(), verdict: verdictKnown(verdict) }];
    }),
    ...faults.map((row): [string, PackLine] => {
      const { faultId, at, closedAt, setTag: _its, ...line } = faultLineOf(row);
      return [faultId, { ...line, id: faultId, at: at.toISOString(), closedAt: closedAt?.toISOString() ?? null }];
    }),
  ]);
  const bySet = new Map<string, PackLine[]>(setIds.map((id) => [id, []]));
  for (const { setId, id } of found) {
    const line = lines.get(id);
    if (line !== undefined) bySet.get(setId)?.push(line);
  }
  return bySet;
}

/** The database holds the column to these words. */
const verdictKnown = (verdict: string | null) => VERDICTS.find((each) => each === verdict) ?? null;
