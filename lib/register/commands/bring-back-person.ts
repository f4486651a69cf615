import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { NOWHERE } from '../invitation';
import { NOBODY, personStep } from './person-step';
import { type Refused, refused } from './refused';

/** Lets a retired person sign in again, with the role and password they had. Their tokens stay dead. */
export async function bringBackPerson(actor: Actor, userId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'people.manage');
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const person = await personStep(tx, actor, userId);
    if (person === null) return NOBODY;
    if (person.retiredAt === null) return refused('userId', 'is not retired');
    if (person.email.endsWith(NOWHERE)) return refused('userId', 'is no longer named: invite the person anew');
    await tx.user.update({ where: { id: userId }, data: { retiredAt: null } });
    const change = { before: { retiredAt: person.retiredAt.toISOString() }, after: { retiredAt: null } };
    await record(tx, actor, { action: 'person.bring-back', thing: 'person', thingId: userId, ...change });
    return { outcome: 'saved' };
  });
}
