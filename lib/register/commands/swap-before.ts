import { createHash } from 'node:crypto';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import type { Problem } from '@/lib/plant/reading';
import type { SwapRequest } from './swap-request';

export type SwapVerdict = 'straight-swap' | 'swap-with-work' | 'check-first' | 'unsuitable';

export type SwapBefore =
  /** `verdict` as it was judged then; null: put in without a judgement. */
  | { outcome: 'saved'; swapId: string; verdict: SwapVerdict | null; isRepeat: boolean }
  | { outcome: 'refused'; problems: Problem[] };

/** What came of a request that was sent before; null: it was not, or is being carried out. */
export function swapBefore(actor: Actor, request: SwapRequest): Promise<SwapBefore | null> {
  must(actor, 'swap.record');
  return known(db, actor, request);
}

/** The same in the transaction that carries it out: of two sendings of one request the second waits here for the first. */
export async function swapBeforeIn(tx: Tx, actor: Actor, request: SwapRequest): Promise<SwapBefore | null> {
  await tx.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`${actor.siteId} ${request.key}`}, 0))`;
  return known(tx, actor, request);
}

async function known(tx: Tx, { siteId }: Actor, request: SwapRequest): Promise<SwapBefore | null> {
  const before = await tx.swap.findUnique({
    where: { siteId_key: { siteId, key: request.key } },
    select: { id: true, verdict: true, bodySha256: true },
  });
  if (!before) return null;
  if (before.bodySha256 === sumOf(request))
    return { outcome: 'saved', swapId: before.id, verdict: before.verdict as SwapVerdict | null, isRepeat: true };
  return {
    outcome: 'refused',
    problems: [{ path: 'key', value: request.key, says: 'was used before, for a swap that said something else' }],
  };
}

/**
 * What a request says, as one sum. What is not told counts as not there: the same request, read later by a schema that
 * asks more, says the same.
 */
export const sumOf = (request: SwapRequest) =>
  createHash('sha256')
    .update(JSON.stringify(request, (_key, value) => (value === null ? undefined : value)))
    .digest('hex');
