import { type Actor, must, type Role } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { NOWHERE } from '../invitation';

export interface Person {
  userId: string;
  name: string;
  /** Null: the person is no longer named. */
  email: string | null;
  role: Role;
  retiredAt: Date | null;
  lastSignIn: Date | null;
}

const MOST = 500;

/** The people of the site: first those who may come in, by name. */
export async function people(actor: Actor): Promise<{ people: Person[]; isAll: boolean }> {
  must(actor, 'people.manage');
  const { siteId } = actor;
  const rows = await db.user.findMany({
    where: { siteId },
    orderBy: [{ retiredAt: { sort: 'desc', nulls: 'first' } }, { name: 'asc' }, { id: 'asc' }],
    take: MOST + 1,
    select: { id: true, name: true, email: true, role: true, retiredAt: true },
  });
  const shown = rows.slice(0, MOST);
  const signIns = await lastSignIns(
    siteId,
    shown.map(({ id }) => id),
  );
  return {
    people: shown.map(({ id, email, role, ...row }) => ({
      ...row,
      userId: id,
      email: email.endsWith(NOWHERE) ? null : email,
      role: role as Role,
      lastSignIn: signIns.get(id) ?? null,
    })),
    isAll: rows.length <= MOST,
  };
}

/** From the audit, since a session that has ended is gone. */
export async function lastSignIns(siteId: string, userIds: string[]): Promise<Map<string, Date | null>> {
  const found = await db.auditEntry.groupBy({
    by: ['thingId'],
    where: { siteId, thing: 'person', thingId: { in: userIds }, action: 'person.sign-in' },
    _max: { at: true },
  });
  return new Map(found.flatMap(({ thingId, _max }) => (thingId === null ? [] : [[thingId, _max.at] as const])));
}
