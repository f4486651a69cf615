import type { z } from 'zod';
import type { Actor } from '@/lib/auth/may';
import { difference, type State } from '@/lib/fields/state';
import { read } from '@/lib/plant/reading';
import { changeThings } from '@/lib/register/commands/change-things';
import { tagOf, tagRead } from './entity-tag';
import { valueSent } from './json-sent';
import { answer, problem } from './problem';
import { patched } from './record-of';

type Stands = { version: number } & object;

/** Changes one record as a merge patch says, if it stands as the asker read it. */
export async function changeSent(
  request: Request,
  actor: Actor,
  {
    thing,
    operation,
    record,
    asRead,
    now,
  }: {
    thing: 'set' | 'motor';
    operation: { body: { schema: z.ZodType; types: readonly string[] } };
    record: { id: string; version: number; state: State };
    /** What would be answered to who reads it. */
    asRead: Stands;
    /** The same when it was changed, or was not. */
    now: () => Promise<Stands | null>;
  },
): Promise<Response> {
  const tag = tagRead(request);
  if (tag instanceof Response) return tag;
  const sent = await valueSent(request, operation.body.types);
  if (sent instanceof Response) return sent;
  const told = read(operation.body.schema, sent.value);
  if (!told.ok) return problem(422, 'The change is not understood.', told.problems);
  if (tag !== tagOf(asRead)) return tooLate();
  const state = patched(record.state, sent.value as Record<string, unknown>);
  const edit = difference(record.state, state)?.after ?? {};
  const done = await changeThings(actor, [{ thing, id: record.id, version: record.version, edit }]);
  switch (done.outcome) {
    case 'stale':
      return tooLate();
    case 'refused':
      return problem(
        422,
        'The record cannot stand so.',
        done.problems.map(({ path, value, says }) => ({
          path: path.replace(/^supply\.name$/, 'supplyName'),
          value,
          says,
        })),
      );
    case 'same':
    case 'saved': {
      const stands = await now();
      if (stands === null) return problem(404, 'It is not there any more.');
      return answer(stands, 200, { etag: tagOf(stands) });
    }
  }

  async function tooLate(): Promise<Response> {
    const stands = await now();
    const late = problem(412, 'It was changed since it was read.', [], stands === null ? {} : { stands });
    if (stands !== null) late.headers.set('etag', tagOf(stands));
    return late;
  }
}
