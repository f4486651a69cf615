import { record } from '@/lib/audit/record';
import { type Actor, must, ROLES, type Role } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { endProxies, endSessions, isLastAdministrator, LAST, NOBODY, personStep } from './person-step';
import { type Refused, refused } from './refused';

export type RoleOutcome = { outcome: 'saved' } | { outcome: 'stale'; role: Role } | Refused;

/**
 * Gives a person of the site another role, if it is still the one that was seen. Sessions, tokens and links of the old
 * role end: whoever has more or less to do signs in again.
 */
export async function changeRole(
  actor: Actor,
  { userId, from, to }: { userId: string; from: Role; to: Role },
): Promise<RoleOutcome> {
  must(actor, 'people.manage');
  if (!ROLES.includes(to)) return refused('role', 'is no role known here');
  return db.$transaction(async (tx): Promise<RoleOutcome> => {
    const person = await personStep(tx, actor, userId);
    if (person === null) return NOBODY;
    const { role } = person;
    if (person.retiredAt !== null) return refused('userId', 'is retired: bring the person back first');
    if (role !== from) return { outcome: 'stale', role };
    if (role === to) return { outcome: 'saved' };
    if (await isLastAdministrator(tx, actor, person)) return LAST;
    await tx.user.update({ where: { id: userId }, data: { role: to } });
    const sessionsEnded = await endSessions(tx, userId);
    const ended = await endProxies(tx, actor, userId);
    const change = { before: { role }, after: { role: to, sessionsEnded } };
    await record(tx, actor, { action: 'person.role', thing: 'person', thingId: userId, ...change }, ...ended);
    return { outcome: 'saved' };
  });
}
