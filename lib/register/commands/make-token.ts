import { z } from 'zod';
import { record } from '@/lib/audit/record';
import { TOKEN_PREFIX } from '@/lib/auth/actor-of-token';
import { type Actor, must } from '@/lib/auth/may';
import { newSecret } from '@/lib/auth/new-secret';
import { SCOPES } from '@/lib/auth/scopes';
import { db } from '@/lib/db/client';
import { read } from '@/lib/plant/reading';
import { type Refused, refused } from './refused';

const MOST_DAYS = 365;
const DAY_MS = 86_400_000;

const newToken = z.strictObject({
  name: z
    .string()
    .transform((text) => text.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]+/gu, ' ').trim())
    .refine((text) => text !== '' && text.length <= 60, { error: 'must have 1 to 60 characters' }),
  scopes: z
    .array(z.enum(SCOPES))
    .transform((scopes) => SCOPES.filter((scope) => scopes.includes(scope)))
    .refine((scopes) => scopes.length > 0, { error: 'must be one of read, write and assess, or more' }),
  days: z.number().refine((days) => Number.isInteger(days) && days >= 1 && days <= MOST_DAYS, {
    error: `must be a whole number from 1 to ${MOST_DAYS}`,
  }),
  /** Whose it is: it acts as they do. Absent: the administrator's own. */
  ownerId: z.string().max(100).optional(),
});

export type NewToken = z.input<typeof newToken>;
/** `secret` is told here and never again. */
export type TokenOutcome = { outcome: 'saved'; tokenId: string; secret: string; expiresAt: Date } | Refused;

/** Makes a token by which a program asks as a person of the site does, within its scopes and until its day. */
export async function makeToken(actor: Actor, asked: NewToken): Promise<TokenOutcome> {
  must(actor, 'token.manage');
  const { siteId } = actor;
  const told = read(newToken, asked);
  if (!told.ok) return { outcome: 'refused', problems: told.problems };
  const { name, scopes, days, ownerId: userId = actor.userId } = told.value;
  const { secret, sha256 } = newSecret(TOKEN_PREFIX);
  const expiresAt = new Date(Date.now() + days * DAY_MS);
  return db.$transaction(async (tx): Promise<TokenOutcome> => {
    // Held, so that nobody is retired while a token is made for them.
    const owners = await tx.$queryRaw<{ retired_at: Date | null }[]>`
      SELECT retired_at FROM "user" WHERE site_id = ${siteId}::uuid AND id = ${userId} FOR NO KEY UPDATE`;
    if (owners[0] === undefined || owners[0].retired_at !== null) return refused('ownerId', 'is nobody of this site');
    const { id } = await tx.apiToken.create({
      data: { siteId, userId, name, sha256, scopes, expiresAt },
      select: { id: true },
    });
    const after = { ownerId: userId, scopes, expiresAt: expiresAt.toISOString() };
    await record(tx, actor, { action: 'token.make', thing: 'token', thingId: id, after });
    return { outcome: 'saved', tokenId: id, secret, expiresAt };
  });
}
