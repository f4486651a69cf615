import { failed, referenceText } from '@/app/failed';
import type { Action, Actor } from '@/lib/auth/may';
import { askerFor, type BySession } from './asker-for';
import { problem } from './problem';

/**
 * The door of every route that answers a program or a file: who asks and whether they may, then the work; a failure
 * tells its reference and no more. `bySession`: tokens are let in nowhere here, and who is not signed in is told so.
 */
export async function askedBy(
  request: Request,
  action: Action,
  work: (actor: Actor) => Promise<Response>,
  bySession: BySession | null = null,
): Promise<Response> {
  try {
    const asker = await askerFor(request, action, bySession);
    return asker instanceof Response ? asker : await work(asker);
  } catch (error) {
    const { isGone, reference } = failed(error, 'a route failed');
    return isGone
      ? problem(503, 'The database does not answer. Try again in a minute.')
      : problem(500, referenceText(reference));
  }
}
