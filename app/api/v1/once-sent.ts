import type { Actor } from '@/lib/auth/may';
import type { Problem } from '@/lib/plant/reading';
import { type Answered, type OnceWork, once } from '@/lib/register/commands/once';
import { answer, problem } from './problem';

/** What came of a request that is carried out once; it is kept so. */
export type Made =
  | { status: 201 | 202; body: object; location?: string; tag?: string }
  | { status: 409 | 422; title: string; problems: readonly Problem[] };

/** Carries out what was sent, once under its Idempotency-Key, and answers what it came to, now or then. */
export async function onceSent(
  request: Request,
  actor: Actor,
  text: string,
  work: (...within: Parameters<OnceWork>) => Promise<Made>,
): Promise<Response> {
  const key = request.headers.get('idempotency-key');
  if (key !== null && !/^[\x21-\x7e]{1,200}$/.test(key))
    return problem(400, 'Idempotency-Key must have 1 to 200 printable signs without blanks.');
  const body = `${request.method} ${new URL(request.url).pathname}\n${text}`;
  const done = await once(actor, { key, body }, async (tx) => {
    const made = await work(tx);
    return { status: made.status, answer: made as unknown as Answered['answer'] };
  });
  if (done.outcome === 'other-body')
    return problem(422, 'This Idempotency-Key was used for another request.', [
      { path: 'Idempotency-Key', value: key, says: 'was used before, for something else' },
    ]);
  const made = done.answered.answer as unknown as Made;
  if ('title' in made) return problem(made.status, made.title, made.problems);
  return answer(made.body, made.status, {
    ...(made.location !== undefined && { location: made.location }),
    ...(made.tag !== undefined && { etag: made.tag }),
  });
}
