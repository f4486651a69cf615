import { written } from '@/app/paths';
import type { Actor } from '@/lib/auth/may';
import { setWhole } from '@/lib/register/queries/records-after';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { answerOfSet } from '../../answers';
import { askedBy } from '../../asked-by';
import { changeSent } from '../../change-sent';
import { tagged } from '../../entity-tag';
import { changeSetOp, readSetOp } from '../../operations/register';
import { problem } from '../../problem';

interface Context {
  params: Promise<{ tag: string }>;
}

export const GET = (request: Request, { params }: Context) =>
  askedBy(request, readSetOp.action, async (actor) => {
    const set = await setNamed(actor, (await params).tag);
    return set === null ? NOT_HERE() : tagged(request, answerOfSet(set));
  });

export const PATCH = (request: Request, { params }: Context) =>
  askedBy(request, changeSetOp.action, async (actor) => {
    const set = await setNamed(actor, (await params).tag);
    if (set === null) return NOT_HERE();
    return changeSent(request, actor, {
      ...{ thing: 'set', operation: changeSetOp, record: set, asRead: answerOfSet(set) },
      now: async () => {
        const now = await setWhole(actor, set.id);
        return now === null ? null : answerOfSet(now);
      },
    });
  });

const NOT_HERE = () => problem(404, 'There is no such set at this site.');

/** By its tag, in any case of letters. */
async function setNamed(actor: Actor, tag: string) {
  const known = await setByTag(actor, written(tag));
  return known === null ? null : setWhole(actor, known.row.id);
}
