import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

/** Ends a token of the own site, at once and for good. */
export async function revokeToken(actor: Actor, tokenId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'token.manage');
  const { siteId } = actor;
  return db.$transaction(async (tx): Promise<{ outcome: 'saved' } | Refused> => {
    const where = { siteId, id: tokenId, revokedAt: null };
    const { count } = isId(tokenId)
      ? await tx.apiToken.updateMany({ where, data: { revokedAt: new Date() } })
      : { count: 0 };
    if (count === 0) return refused('tokenId', 'is no token that could be revoked');
    await record(tx, actor, { action: 'token.revoke', thing: 'token', thingId: tokenId });
    return { outcome: 'saved' };
  });
}
