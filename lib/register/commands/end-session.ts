import { record } from '@/lib/audit/record';
import { type Actor, may, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { type Refused, refused } from './refused';

/** Ends one session: one's own, or as administrator that of anybody of the site. */
export async function endSession(actor: Actor, sessionId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'self.manage');
  const { siteId, userId } = actor;
  const whose = may(actor, 'people.manage') ? { siteId } : { siteId, id: userId };
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const session = await tx.session.findFirst({ where: { id: sessionId, user: whose }, select: { userId: true } });
    const { count } = session ? await tx.session.deleteMany({ where: { id: sessionId } }) : { count: 0 };
    if (!session || count === 0) return refused('sessionId', 'is over already');
    const after = { sessionsEnded: count };
    await record(tx, actor, { action: 'person.session-end', thing: 'person', thingId: session.userId, after });
    return { outcome: 'saved' };
  });
}
