import type { Action, Actor } from '@/lib/auth/may';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { askerFor } from './asker-for';
import { problem } from './problem';

/** The door of every API route: who asks and whether they may, then the work; a failure tells its reference and no more. */
export async function askedBy(
  request: Request,
  action: Action,
  work: (actor: Actor) => Promise<Response>,
): Promise<Response> {
  try {
    const asker = await askerFor(request, action);
    return asker instanceof Response ? asker : await work(asker);
  } catch (error) {
    const isGone = isDatabaseGone(error);
    const reference = crypto.randomUUID().slice(0, 8);
    console.error(`${reference} ${isGone ? 'the database is away' : 'an API route failed'}`, error);
    return isGone
      ? problem(503, 'The database does not answer. Try again in a minute.')
      : problem(500, `Something failed here. Its reference is ${reference}.`);
  }
}
