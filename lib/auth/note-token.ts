import { NO_SITE, record } from '@/lib/audit/record';
import { db } from '@/lib/db/client';

const MINUTE_MS = 60_000;

export type Denial = 'unknown' | 'expired' | 'revoked' | 'retired' | 'role' | 'scope';

interface KnownToken {
  id: string;
  siteId: string;
  userId: string;
  lastUsedAt: Date | null;
}

/** Notes that a token is in use, at most once a minute, and leaves a row of its first use on each day (UTC). */
export async function noteTokenUse({ id, siteId, userId, lastUsedAt }: KnownToken): Promise<void> {
  const now = new Date();
  const midnight = new Date(now).setUTCHours(0, 0, 0, 0);
  const before = new Date(Math.max(now.getTime() - MINUTE_MS, midnight));
  if (lastUsedAt !== null && lastUsedAt >= before) return;
  await db.$transaction(async (tx) => {
    const { count } = await tx.apiToken.updateMany({
      where: { siteId, id, OR: [{ lastUsedAt: null }, { lastUsedAt: { lt: before } }] },
      data: { lastUsedAt: now },
    });
    const isFirstToday = count === 1 && (lastUsedAt === null || lastUsedAt.getTime() < midnight);
    if (isFirstToday) await record(tx, { siteId, userId }, { action: 'token.use', thing: 'token', thingId: id });
  });
}

/** Leaves a row of a token that was refused; the same refusal again within a minute leaves none, else a program fills the audit. */
export async function noteTokenDenied(token: Omit<KnownToken, 'lastUsedAt'> | null, why: Denial): Promise<void> {
  const by = token === null ? { siteId: NO_SITE, userId: null } : { siteId: token.siteId, userId: token.userId };
  const entry = { action: 'token.denied', thing: 'token', thingId: token?.id ?? null, note: why };
  const lately = await db.auditEntry.findFirst({
    where: { ...entry, siteId: by.siteId, at: { gt: new Date(Date.now() - MINUTE_MS) } },
    select: { id: true },
  });
  if (lately === null) await record(db, by, entry);
}
