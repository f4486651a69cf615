import { record } from '@/lib/audit/record';
import { hashed, passwordProblem } from '@/lib/auth/password';
import { forget } from '@/lib/auth/sign-in-limit';
import { db } from '@/lib/db/client';
import { usableLink } from '../person-link';
import { NO_LINK } from './no-link';
import { endSessions } from './person-step';
import { type Refused, refused } from './refused';
import { setPassword } from './set-password';

export type ResetOutcome = { outcome: 'saved' } | Refused;

/** Gives a person the password they typed at their link, and ends every session begun under the old one. */
export async function resetByLink(secret: string, password: string): Promise<ResetOutcome> {
  const where = usableLink(secret, 'reset');
  const link = where && (await db.personLink.findFirst({ where, include: { user: true } }));
  if (!link?.user || link.user.retiredAt !== null) return NO_LINK;
  const problem = passwordProblem(password);
  if (problem) return refused('password', problem);
  const { siteId, user } = link;
  const hash = await hashed(password);
  const done = await db.$transaction(async (tx): Promise<ResetOutcome> => {
    const used = await tx.personLink.updateMany({
      where: { ...where, user: { retiredAt: null } },
      data: { usedAt: new Date() },
    });
    if (used.count === 0) return NO_LINK;
    await setPassword(tx, user.id, hash);
    const sessionsEnded = await endSessions(tx, user.id);
    const by = { siteId, userId: user.id };
    const after = { linkId: link.id, sessionsEnded };
    await record(tx, by, { action: 'person.reset', thing: 'person', thingId: user.id, after });
    return { outcome: 'saved' };
  });
  // Whoever forgot the password has tried it too often: the new one is to work at once.
  if (done.outcome === 'saved') await forget(user.email, undefined);
  return done;
}
