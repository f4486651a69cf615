import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { hashed, isPassword, passwordProblem } from '@/lib/auth/password';
import { forget, mayTry } from '@/lib/auth/sign-in-limit';
import { db } from '@/lib/db/client';
import { type Refused, refused } from './refused';
import { setPassword } from './set-password';

/**
 * Changes one's own password, the old one being asked, and ends every session but the one that asks. Wrong old ones
 * are counted with the failed sign-ins: a session left open is no way to try passwords.
 */
export async function changeOwnPassword(
  actor: Actor,
  { sessionId, old, password }: { sessionId: string; old: string; password: string },
): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'self.manage');
  const { userId, siteId } = actor;
  const problem = passwordProblem(password);
  if (problem) return refused('password', problem);
  const { email } = await db.user.findFirstOrThrow({ where: { siteId, id: userId }, select: { email: true } });
  if (!(await mayTry(email, undefined))) return refused('old', 'was wrong too often: wait a while, then try again');
  const account = await db.account.findFirst({ where: { userId, providerId: 'credential' } });
  if (!account?.password || !(await isPassword(account.password, old))) return refused('old', 'is not your password');
  await forget(email, undefined);
  const hash = await hashed(password);
  await db.$transaction(async (tx) => {
    await setPassword(tx, userId, hash);
    const { count } = await tx.session.deleteMany({ where: { userId, id: { not: sessionId } } });
    const after = { sessionsEnded: count };
    await record(tx, actor, { action: 'person.password', thing: 'person', thingId: userId, after });
  });
  return { outcome: 'saved' };
}
