import type { Tx } from '@/lib/db/client';
import type { PackSet } from '@/lib/offline/pack';
import { faultText } from '@/lib/plant/fault';
import { labelCodeOf } from '../label-code-of';
import { setOfRow } from '../set-row';
import { lastLines } from './last-lines';

/** Sets as a phone keeps them, in the order of their ids. */
export async function packSets(tx: Tx, siteId: string, ids: readonly string[]): Promise<PackSet[]> {
  if (ids.length === 0) return [];
  const rows = await tx.pumpSet.findMany({
    where: { siteId, id: { in: [...ids] } },
    include: {
      ...{ area: true, pump: true, supply: true },
      faults: {
        where: { closedAt: null },
        orderBy: [{ at: 'desc' }, { id: 'asc' }],
        include: { by: { select: { name: true } } },
      },
    },
    orderBy: { id: 'asc' },
  });
  const lines = await lastLines(tx, siteId, ids);
  return rows.map(({ faults, ...row }) => {
    const { id, tag, service, criticality, area, pump, note, retiredAt } = row;
    const { failed: _told, ...set } = setOfRow({ ...row, motor: null });
    return {
      ...{ id, tag, code: labelCodeOf(row), service, criticality, note, set },
      area: area?.name ?? null,
      pump: pump && { description: pump.description, kind: pump.kind, maker: pump.maker },
      faults: faults.map((fault) => ({
        id: fault.id,
        says: faultText(fault),
        at: fault.at.toISOString(),
        by: fault.by.name,
      })),
      history: lines.get(id) ?? [],
      retired: retiredAt !== null,
    };
  });
}
