import { SECRET, sha256Of } from '@/lib/auth/new-secret';

/** A link is good for this long (security statement S21); the database refuses longer ones. */
export const LINK_MINUTES = 60;

/** Where a link is that can still be used; null when no secret looks like this. */
export function usableLink(secret: string, purpose: 'invite' | 'reset') {
  if (!SECRET.test(secret)) return null;
  return { sha256: sha256Of(secret), purpose, ...waiting() };
}

/** Neither used nor revoked nor too old. */
export const waiting = () => ({ usedAt: null, revokedAt: null, expiresAt: { gt: new Date() } });

/** From now on, for as long as a link is good. */
export function linkTimes(): { createdAt: Date; expiresAt: Date } {
  const createdAt = new Date();
  return { createdAt, expiresAt: new Date(createdAt.getTime() + LINK_MINUTES * 60_000) };
}
