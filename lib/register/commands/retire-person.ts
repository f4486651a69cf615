import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { endProxies, endSessions, isLastAdministrator, LAST, NOBODY, personStep } from './person-step';
import { type Refused, refused } from './refused';

/** Ends a person's access for good or until they are brought back. What they did stays theirs. */
export async function retirePerson(actor: Actor, userId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'people.manage');
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const person = await personStep(tx, actor, userId);
    if (person === null) return NOBODY;
    if (person.retiredAt !== null) return refused('userId', 'is retired already');
    if (await isLastAdministrator(tx, actor, person)) return LAST;
    const retiredAt = new Date();
    await tx.user.update({ where: { id: userId }, data: { retiredAt } });
    const sessionsEnded = await endSessions(tx, userId);
    const ended = await endProxies(tx, actor, userId);
    const change = { before: { retiredAt: null }, after: { retiredAt: retiredAt.toISOString(), sessionsEnded } };
    await record(tx, actor, { action: 'person.retire', thing: 'person', thingId: userId, ...change }, ...ended);
    return { outcome: 'saved' };
  });
}
