import { db } from '@/lib/db/client';
import { auth } from './auth';
import { type Actor, ROLES, type Role } from './may';
import { IDLE_HOURS } from './session-limits';

/** Seeing a session costs a write, so it is noted this seldom. */
const SEEN_EVERY_MS = 5 * 60 * 1000;

/** The person whose session these headers carry; null when nobody is signed in, or no longer. */
export const actorOf = async (headers: Headers): Promise<Actor | null> => (await signedInOf(headers))?.actor ?? null;

/** The same with the session itself, for who looks after their own. */
export async function signedInOf(headers: Headers): Promise<{ actor: Actor; sessionId: string } | null> {
  const found = await sessionOf(headers);
  if (!found) return null;
  const { session, user } = found;
  const idleMs = Date.now() - session.lastSeenAt.getTime();
  if (user.retiredAt || !isRole(user.role)) {
    await db.session.deleteMany({ where: { id: session.id } });
    return null;
  }
  // It is over, and stays until its last day: so a phone can be told that nobody ended it.
  if (isIdle(session)) return null;
  if (idleMs > SEEN_EVERY_MS)
    await db.session.updateMany({ where: { id: session.id }, data: { lastSeenAt: new Date() } });
  const actor = { userId: user.id, siteId: user.siteId, role: user.role, name: user.name };
  return { actor, sessionId: session.id };
}

/** Whether the session of these headers only went unused for too long: nobody signed out, and nobody ended it. */
export async function hasGoneIdle(headers: Headers): Promise<boolean> {
  const found = await sessionOf(headers);
  return found !== null && !found.user.retiredAt && isIdle(found.session);
}

const sessionOf = (headers: Headers) => auth.api.getSession({ headers });
const isIdle = ({ lastSeenAt }: { lastSeenAt: Date }) => Date.now() - lastSeenAt.getTime() > IDLE_HOURS * 3_600_000;

const isRole = (role: string): role is Role => (ROLES as readonly string[]).includes(role);
