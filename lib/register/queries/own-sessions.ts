import { type Actor, must } from '@/lib/auth/may';
import { IDLE_HOURS } from '@/lib/auth/session-limits';
import { db } from '@/lib/db/client';

/** A session as its owner may see it: without the token that is its key. */
export interface KnownSession {
  id: string;
  createdAt: Date;
  lastSeenAt: Date;
  userAgent: string | null;
  ipAddress: string | null;
}

export const KNOWN_SESSION = {
  select: { id: true, createdAt: true, lastSeenAt: true, userAgent: true, ipAddress: true },
  orderBy: { lastSeenAt: 'desc' },
  take: 100,
} as const;

/** Neither too old nor unused for too long. */
export const live = () => ({
  expiresAt: { gt: new Date() },
  lastSeenAt: { gt: new Date(Date.now() - IDLE_HOURS * 3_600_000) },
});

/** Where the person is signed in, last seen first. */
export async function ownSessions(actor: Actor): Promise<KnownSession[]> {
  must(actor, 'self.manage');
  const { siteId, userId } = actor;
  return db.session.findMany({ where: { userId, user: { siteId }, ...live() }, ...KNOWN_SESSION });
}
