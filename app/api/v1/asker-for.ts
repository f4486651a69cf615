import { actorOf } from '@/lib/auth/actor';
import { actorOfToken, bearerOf } from '@/lib/auth/actor-of-token';
import { type Action, type Actor, may } from '@/lib/auth/may';
import { noteTokenDenied } from '@/lib/auth/note-token';
import { type Scope, scopesFor } from '@/lib/auth/scopes';
import { problem } from './problem';

/** What is for people alone: `signedOut` is told in the refusal of who is not signed in, for the phone’s own program. */
export interface BySession {
  signedOut: (headers: Headers) => object | Promise<object>;
}

/** Who asks, by token or by session, if they may; or the answer that refuses them. A request with a token is judged by it alone. */
export async function askerFor(
  request: Request,
  action: Action,
  bySession: BySession | null = null,
): Promise<Actor | Response> {
  const bearer = bearerOf(request.headers);
  if (bearer !== null) return askerByToken(bearer, bySession === null ? scopesFor(action, request.method) : [], action);
  const actor = await actorOf(request.headers);
  if (actor === null && bySession !== null)
    return problem(401, 'Nobody is signed in.', [], await bySession.signedOut(request.headers));
  if (actor === null) return challenged(problem(401, 'Sign in first, or send a token.'), 'Bearer');
  return may(actor, action) ? actor : problem(403, 'Your role may not do this.');
}

/** Refusals are told as RFC 6750, 3.1 has them. */
async function askerByToken(bearer: string, needed: readonly Scope[], action: Action): Promise<Actor | Response> {
  const asker = await actorOfToken(bearer);
  if (asker === null)
    return challenged(problem(401, 'The token is not known, or no longer good.'), 'Bearer error="invalid_token"');
  const { actor, scopes, tokenId } = asker;
  const token = { id: tokenId, siteId: actor.siteId, userId: actor.userId };
  if (needed.length === 0) {
    await noteTokenDenied(token, 'scope');
    return problem(403, 'No token may do this.');
  }
  if (!needed.some((scope) => scopes.includes(scope))) {
    await noteTokenDenied(token, 'scope');
    return challenged(
      problem(403, `The token lacks the scope for this: ${needed.join(' or ')}.`),
      `Bearer error="insufficient_scope", scope="${needed[0]}"`,
    );
  }
  if (may(actor, action)) return actor;
  await noteTokenDenied(token, 'role');
  return problem(403, 'The role of the token’s owner may not do this.');
}

function challenged(answer: Response, challenge: string): Response {
  answer.headers.set('www-authenticate', challenge);
  return answer;
}
