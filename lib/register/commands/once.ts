import { createHash } from 'node:crypto';
import type { Actor } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { Prisma } from '@/lib/db/generated/client';
import { triedAgain } from '@/lib/db/tried-again';
import { MOST_AT_ONCE } from './parts';

/** What was answered to a request: kept for as long as it may be asked again. */
export interface Answered {
  status: number;
  answer: Prisma.InputJsonObject;
}

export type Once = { outcome: 'done' | 'repeated'; answered: Answered } | { outcome: 'other-body' };

/** What is carried out: within the transaction that keeps its answer. */
export type OnceWork = (tx: Tx) => Promise<Answered>;

const KEPT_DAYS = 7;

/**
 * Carries a request out once, however often and however many at once it is sent: what it changes and what it answered
 * are written in one transaction. The same key with another body is refused. What was not carried out (a status from 400
 * on) is not kept, so that it can be mended under the same key.
 */
export async function once(
  { siteId, userId }: Actor,
  { key, body }: { key: string | null; body: string },
  work: OnceWork,
): Promise<Once> {
  const bodySha256 = createHash('sha256').update(body).digest('hex');
  try {
    return await triedAgain(() =>
      db.$transaction(
        async (tx): Promise<Once> => {
          if (key === null) return { outcome: 'done', answered: whole(await work(tx)) };
          // Those sent at once wait for each other here.
          await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${siteId} ${userId} ${key}`}, 0))`;
          const oldest = new Date(Date.now() - KEPT_DAYS * 86_400_000);
          await tx.seenRequest.deleteMany({ where: { siteId, at: { lt: oldest } } });
          const before = await tx.seenRequest.findUnique({ where: { siteId_userId_key: { siteId, userId, key } } });
          if (before !== null) {
            if (before.bodySha256 !== bodySha256) return { outcome: 'other-body' };
            return {
              outcome: 'repeated',
              answered: { status: before.status, answer: before.answer as Prisma.InputJsonObject },
            };
          }
          const answered = whole(await work(tx));
          await tx.seenRequest.create({ data: { siteId, userId, key, bodySha256, ...answered } });
          return { outcome: 'done', answered };
        },
        { timeout: MOST_AT_ONCE },
      ),
    );
  } catch (error) {
    if (error instanceof NotCarriedOut) return { outcome: 'done', answered: error.answered };
    throw error;
  }
}

/** A refusal gives up whatever the work had written before it. */
function whole(answered: Answered): Answered {
  if (answered.status >= 400) throw new NotCarriedOut(answered);
  return answered;
}

class NotCarriedOut extends Error {
  override name = 'NotCarriedOut';
  constructor(readonly answered: Answered) {
    super(`answered ${answered.status}`);
  }
}
