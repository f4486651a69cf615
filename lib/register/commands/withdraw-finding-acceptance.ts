import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

/** Takes an acceptance back: the finding stands open again, if it is still raised. The acceptance stays on record. */
export async function withdrawFindingAcceptance(
  actor: Actor,
  acceptanceId: string,
): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'review.accept');
  const { siteId } = actor;
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const where = { siteId, id: acceptanceId, withdrawnAt: null };
    const before = isId(acceptanceId) ? await tx.reviewAcceptance.findFirst({ where }) : null;
    const { count } =
      before === null
        ? { count: 0 }
        : await tx.reviewAcceptance.updateMany({ where, data: { withdrawnAt: new Date() } });
    if (before === null || count === 0) return refused('acceptance', 'is none that stands at this site');
    const { setId, rule, reason } = before;
    await record(tx, actor, {
      action: 'review.withdraw',
      thing: 'set',
      thingId: setId,
      after: { acceptanceId, rule, why: reason },
    });
    return { outcome: 'saved' };
  });
}
