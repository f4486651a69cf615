import { type Actor, must, type Role } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { NOWHERE } from '../invitation';
import { KNOWN_SESSION, type KnownSession, live } from './own-sessions';
import { lastSignIns, type Person } from './people';

/** A person of the site with their sessions; null when there is none. */
export async function personById(
  actor: Actor,
  userId: string,
): Promise<(Person & { sessions: KnownSession[] }) | null> {
  must(actor, 'people.manage');
  const { siteId } = actor;
  const row = await db.user.findFirst({
    where: { siteId, id: userId },
    select: { name: true, email: true, role: true, retiredAt: true, sessions: { where: live(), ...KNOWN_SESSION } },
  });
  if (row === null) return null;
  const signIns = await lastSignIns(siteId, [userId]);
  return {
    ...row,
    userId,
    email: row.email.endsWith(NOWHERE) ? null : row.email,
    role: row.role as Role,
    lastSignIn: signIns.get(userId) ?? null,
  };
}
