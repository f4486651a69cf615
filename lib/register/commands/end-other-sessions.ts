import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { type Refused, refused } from './refused';

export type SessionsOutcome = { outcome: 'saved'; ended: number } | Refused;

/**
 * Ends the sessions of a person, one's own or as administrator anybody's of the site. `keep` is the session that asks:
 * it goes on.
 */
export async function endOtherSessions(
  actor: Actor,
  { of, keep }: { of: string; keep: string },
): Promise<SessionsOutcome> {
  must(actor, 'self.manage');
  if (of !== actor.userId) must(actor, 'people.manage');
  const { siteId } = actor;
  return db.$transaction(async (tx): Promise<SessionsOutcome> => {
    const person = await tx.user.findFirst({ where: { siteId, id: of }, select: { id: true } });
    if (!person) return refused('userId', 'is nobody of this site');
    const { count } = await tx.session.deleteMany({ where: { userId: of, id: { not: keep } } });
    const after = { sessionsEnded: count };
    if (count > 0) await record(tx, actor, { action: 'person.session-end', thing: 'person', thingId: of, after });
    return { outcome: 'saved', ended: count };
  });
}
