import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';

export interface KnownToken {
  tokenId: string;
  name: string;
  owner: string;
  scopes: string[];
  createdAt: Date;
  expiresAt: Date;
  lastUsedAt: Date | null;
  revokedAt: Date | null;
}

const MOST = 200;

/** The tokens of the site, the dead ones last. What they are is told by none. */
export async function tokens(actor: Actor): Promise<{ tokens: KnownToken[]; isAll: boolean }> {
  must(actor, 'token.manage');
  const rows = await db.apiToken.findMany({
    where: { siteId: actor.siteId },
    orderBy: [{ revokedAt: { sort: 'desc', nulls: 'first' } }, { expiresAt: 'desc' }, { id: 'asc' }],
    take: MOST + 1,
    include: { user: { select: { name: true } } },
  });
  return {
    tokens: rows.slice(0, MOST).map(({ id, name, user, scopes, createdAt, expiresAt, lastUsedAt, revokedAt }) => ({
      tokenId: id,
      owner: user.name,
      ...{ name, scopes, createdAt, expiresAt, lastUsedAt, revokedAt },
    })),
    isAll: rows.length <= MOST,
  };
}
