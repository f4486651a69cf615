import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { NOWHERE } from '../invitation';
import { NOBODY, personStep } from './person-step';
import { type Refused, refused } from './refused';

export type AnonymiseOutcome = { outcome: 'saved'; name: string } | Refused;

/**
 * Takes name, address, password and links from a retired person, for good. Their swaps and changes stand, done by
 * "A person (3)". The audit needs no mending: it knows people by their id alone.
 */
export async function anonymisePerson(actor: Actor, userId: string): Promise<AnonymiseOutcome> {
  must(actor, 'people.manage');
  const { siteId } = actor;
  return db.$transaction(async (tx): Promise<AnonymiseOutcome> => {
    const person = await personStep(tx, actor, userId);
    if (person === null) return NOBODY;
    if (person.retiredAt === null) return refused('userId', 'is not retired: retire the person first');
    if (person.email.endsWith(NOWHERE)) return refused('userId', 'is no longer named already');
    const before = await tx.user.count({ where: { siteId, email: { endsWith: NOWHERE } } });
    const [name, email] = [`A person (${before + 1})`, `${userId.toLowerCase()}${NOWHERE}`];
    await tx.user.update({ where: { id: userId }, data: { name, email, image: null, units: null } });
    await tx.personLink.updateMany({ where: { siteId, email: person.email }, data: { name, email } });
    await tx.account.deleteMany({ where: { userId } });
    await tx.session.deleteMany({ where: { userId } });
    await tx.savedView.deleteMany({ where: { siteId, userId } });
    await tx.signInLimit.deleteMany({ where: { who: `account ${person.email}` } });
    await record(tx, actor, { action: 'person.anonymise', thing: 'person', thingId: userId });
    return { outcome: 'saved', name };
  });
}
