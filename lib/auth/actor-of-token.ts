import { db } from '@/lib/db/client';
import { type Actor, ROLES, type Role } from './may';
import { SECRET, sha256Of } from './new-secret';
import { noteTokenDenied, noteTokenUse } from './note-token';
import { SCOPES, type Scope } from './scopes';

/** By this a token is known for one of ours, wherever it turns up. */
export const TOKEN_PREFIX = 'bp_';

/** Who asks by a token: its owner, within its scopes. */
export interface TokenAsker {
  tokenId: string;
  actor: Actor;
  scopes: Scope[];
}

/** What stands behind "Bearer" (RFC 6750, 2.1); null when the request carries no token. */
export function bearerOf(headers: Headers): string | null {
  const [, token] = /^bearer(?:\s+(.*))?$/i.exec(headers.get('authorization') ?? '') ?? [null, null];
  return token === null ? null : (token ?? '').trim();
}

/** The owner of a token as they stand now; null when it is unknown, expired or revoked, or its owner has left. */
export async function actorOfToken(bearer: string): Promise<TokenAsker | null> {
  const isToken = bearer.startsWith(TOKEN_PREFIX) && SECRET.test(bearer.slice(TOKEN_PREFIX.length));
  const token = isToken
    ? await db.apiToken.findUnique({ where: { sha256: sha256Of(bearer) }, include: { user: true } })
    : null;
  if (token === null) {
    await noteTokenDenied(null, 'unknown');
    return null;
  }
  const { user, siteId, userId } = token;
  const { role } = user;
  const isExpired = token.expiresAt.getTime() <= Date.now();
  if (token.revokedAt !== null || isExpired || user.retiredAt !== null || user.siteId !== siteId || !isRole(role)) {
    await noteTokenDenied(token, token.revokedAt !== null ? 'revoked' : isExpired ? 'expired' : 'retired');
    return null;
  }
  await noteTokenUse(token);
  return {
    tokenId: token.id,
    actor: { userId, siteId, role, name: user.name },
    scopes: SCOPES.filter((scope) => token.scopes.includes(scope)),
  };
}

const isRole = (role: string): role is Role => (ROLES as readonly string[]).includes(role);
