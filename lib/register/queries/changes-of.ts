import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Edit } from '@/lib/fields/state';
import { toldChanges } from '@/lib/fields/told-changes';
import type { ChangeLine } from '../history-line';
import { namesOf } from '../names-of';
import { ownUnits } from './own-units';

/** What the audit tells of one thing, newest first, without the actions that a history shows in its own way. */
export async function changesOf(
  actor: Actor,
  thing: string,
  thingId: string,
  without: string[],
  take: number,
): Promise<ChangeLine[]> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const rows = await db.auditEntry.findMany({
    where: { siteId, thing, thingId, action: { notIn: without } },
    orderBy: { at: 'desc' },
    take,
  });
  const ids = [...new Set(rows.flatMap(({ byId }) => (byId === null ? [] : [byId])))];
  const people = await db.user.findMany({ where: { siteId, id: { in: ids } }, select: { id: true, name: true } });
  const names = new Map(people.map(({ id, name }) => [id, name]));
  const [{ nameOf }, units] = await Promise.all([namesOf(siteId, rows), ownUnits(actor)]);
  return rows.map(({ at, byId, action, before, after }) => ({
    kind: 'change',
    at,
    by: (byId === null ? undefined : names.get(byId)) ?? null,
    action,
    changes: action.endsWith('.register')
      ? []
      : toldChanges(thing, (before ?? {}) as Edit, (after ?? {}) as Edit, units, nameOf),
  }));
}
