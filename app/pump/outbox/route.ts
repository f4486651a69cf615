import { askedBy } from '@/app/api/v1/asked-by';
import { valueSent } from '@/app/api/v1/json-sent';
import { JSON_TYPE } from '@/app/api/v1/operation';
import { answer, problem } from '@/app/api/v1/problem';
import { may } from '@/lib/auth/may';
import type { OutboxAnswer } from '@/lib/offline/outbox';
import { type Problem, read } from '@/lib/plant/reading';
import { CARRIERS } from '@/lib/register/outbox/carriers';
import { outboxMessage } from '@/lib/register/outbox/message';

const MOST_MB = Math.max(...Object.values(CARRIERS).map(({ mostMb }) => mostMb));

const signedOut = () => ({ outcome: 'signed-out' }) satisfies OutboxAnswer;

/** Takes one message that waited on a phone, and carries it out once for its key (R2 R5 R12). */
export const POST = (request: Request) =>
  askedBy(
    request,
    'register.read',
    async (actor) => {
      const sent = await valueSent(request, JSON_TYPE, MOST_MB);
      if (sent instanceof Response) return sent;
      const message = read(outboxMessage, sent.value);
      if (!message.ok) return refused(message.problems);
      const { kind, userId, siteId } = message.value;
      // Two people share a phone: what one wrote is never told as another's.
      if (userId !== actor.userId || siteId !== actor.siteId)
        return told(403, 'It was written by somebody else, or for another site.', { outcome: 'not-theirs' });
      const carrier = CARRIERS[kind];
      if (!may(actor, carrier.action)) return problem(403, 'Your role may not do this.');
      if (Buffer.byteLength(sent.text) > carrier.mostMb * 1024 * 1024)
        return problem(413, `The body is larger than ${carrier.mostMb} MB.`);
      const done = await carrier.carryOut(actor, message.value);
      switch (done.outcome) {
        case 'saved':
          return answer(done satisfies OutboxAnswer);
        case 'taken':
          return told(409, 'Somebody was first.', { ...done, at: done.at?.toISOString() ?? null });
        case 'refused':
          return refused(done.problems);
      }
    },
    { signedOut },
  );

const told = (status: number, title: string, outcome: OutboxAnswer) => problem(status, title, [], outcome);
const refused = (problems: Problem[]) =>
  problem(422, 'It cannot be recorded as it stands.', problems, {
    outcome: 'refused',
    problems,
  } satisfies OutboxAnswer);
