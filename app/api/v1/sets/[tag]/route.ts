import { written } from '@/app/paths';
import type { Actor } from '@/lib/auth/may';
import { setWhole } from '@/lib/register/queries/records-after';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { answerOfSet } from '../../answers';
import { askedBy } from '../../asked-by';
import { changeSent } from '../../change-sent';
import { hasAlready, tagOf } from '../../entity-tag';
import { changeSetOp } from '../../operations/register';
import { answer, problem } from '../../problem';

interface Context {
  params: Promise<{ tag: string }>;
}

export const GET = (request: Request, { params }: Context) =>
  askedBy(request, 'register.read', async (actor) => {
    const set = await setNamed(actor, (await params).tag);
    if (set === null) return NOT_HERE();
    const etag = tagOf(set.version);
    return hasAlready(request, set.version)
      ? new Response(null, { status: 304, headers: { etag } })
      : answer(answerOfSet(set), 200, { etag });
  });

export const PATCH = (request: Request, { params }: Context) =>
  askedBy(request, 'set.edit', async (actor) => {
    const set = await setNamed(actor, (await params).tag);
    if (set === null) return NOT_HERE();
    return changeSent(request, actor, {
      ...{ thing: 'set', operation: changeSetOp, record: set },
      now: async () => {
        const now = await setWhole(actor, set.id);
        return now === null ? null : { version: now.version, body: answerOfSet(now) };
      },
    });
  });

const NOT_HERE = () => problem(404, 'There is no such set at this site.');

/** By its tag, in any case of letters. */
async function setNamed(actor: Actor, tag: string) {
  const known = await setByTag(actor, written(tag));
  return known === null ? null : setWhole(actor, known.row.id);
}
