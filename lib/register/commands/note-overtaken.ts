import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { stateOf } from '@/lib/fields/state';
import type { SwapRequest } from './swap-request';

const ACTION = 'swap.overtaken';

/**
 * Keeps what was told of a swap at a pump that somebody else's came before, so that the desk sees it: once for its key,
 * however often it is sent.
 */
export async function noteOvertaken(actor: Actor, { key, setId, workDone, checks, ...told }: SwapRequest) {
  must(actor, 'swap.record');
  const { siteId } = actor;
  const about = { thing: 'set', thingId: setId };
  await db.$transaction(async (tx) => {
    await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${siteId} ${key}`}, 0))`;
    const noted = { siteId, ...about, action: ACTION, after: { path: ['requestId'], equals: key } };
    if ((await tx.auditEntry.count({ where: noted })) > 0) return;
    const after = {
      ...stateOf(told),
      ...(workDone.length > 0 && { workDone: workDone.map(({ what, hours }) => `${what} (${hours} h)`) }),
      ...(checks.length > 0 && { checks: checks.map(({ criterion, says }) => `${criterion}: ${says}`) }),
      requestId: key,
    };
    await record(tx, actor, { ...about, action: ACTION, after: JSON.parse(JSON.stringify(after)) });
  });
}
