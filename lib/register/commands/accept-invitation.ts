import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { hashed, passwordProblem } from '@/lib/auth/password';
import { db } from '@/lib/db/client';
import { isTaken } from '@/lib/db/tried-again';
import { usableLink } from '../person-link';
import { NO_LINK } from './no-link';
import { type Refused, refused } from './refused';

export type JoinOutcome = { outcome: 'saved'; userId: string } | Refused;

/** Brings the invited person in with a password of their own. Who holds the link asks; it is used up by this alone. */
export async function acceptInvitation(secret: string, password: string): Promise<JoinOutcome> {
  const where = usableLink(secret, 'invite');
  const link = where && (await db.personLink.findFirst({ where }));
  if (!link || link.name === null || link.email === null || link.role === null) return NO_LINK;
  const problem = passwordProblem(password);
  if (problem) return refused('password', problem);
  const { siteId, name, email, role } = link;
  const hash = await hashed(password);
  const id = randomUUID();
  try {
    return await db.$transaction(async (tx) => {
      // Of two at once the second waits here for the first, and finds the link used.
      const used = await tx.personLink.updateMany({ where, data: { usedAt: new Date() } });
      if (used.count === 0) return NO_LINK;
      await tx.user.create({ data: { id, siteId, name, email, role, emailVerified: true } });
      await tx.account.create({
        data: { id: randomUUID(), userId: id, accountId: id, providerId: 'credential', password: hash },
      });
      const by = { siteId, userId: id };
      await record(tx, by, { action: 'person.join', thing: 'person', thingId: id, after: { role, linkId: link.id } });
      return { outcome: 'saved', userId: id };
    });
  } catch (error) {
    if (!isTaken(error)) throw error;
    return refused('email', 'cannot be given an account here: ask for an invitation under another address');
  }
}
