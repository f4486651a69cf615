import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { ChangeLine } from '../history-line';

/** What the audit tells of one thing, newest first, without the actions that a history shows in its own way. */
export async function changesOf(
  { siteId }: Actor,
  thing: string,
  thingId: string,
  without: string[],
  take: number,
): Promise<ChangeLine[]> {
  const rows = await db.auditEntry.findMany({
    where: { siteId, thing, thingId, action: { notIn: without } },
    orderBy: { at: 'desc' },
    take,
  });
  const ids = [...new Set(rows.flatMap(({ byId }) => (byId === null ? [] : [byId])))];
  const people = await db.user.findMany({ where: { id: { in: ids } }, select: { id: true, name: true } });
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return rows.map(({ at, byId, action, before, after }) => ({
    kind: 'change',
    at,
    by: (byId === null ? undefined : names.get(byId)) ?? null,
    action,
    before,
    after,
  }));
}
