import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

/** Takes an acceptance back: the doubt is raised again, if its figures still raise it. The acceptance stays on record. */
export async function withdrawAcceptance(actor: Actor, acceptanceId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'doubt.accept');
  const { siteId } = actor;
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const where = { siteId, id: acceptanceId, withdrawnAt: null };
    const before = isId(acceptanceId) ? await tx.acceptance.findFirst({ where }) : null;
    const { count } =
      before === null ? { count: 0 } : await tx.acceptance.updateMany({ where, data: { withdrawnAt: new Date() } });
    if (before === null || count === 0) return refused('acceptance', 'is none that stands at this site');
    const { thing, thingId, rule, reason } = before;
    await record(tx, actor, {
      action: 'doubt.withdraw',
      thing,
      thingId,
      after: { acceptanceId, rule, why: reason },
    });
    return { outcome: 'saved' };
  });
}
