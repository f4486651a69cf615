import { setPath } from '@/app/paths';
import { read } from '@/lib/plant/reading';
import { registerSetsIn } from '@/lib/register/commands/register-sets';
import { setsAfter, setsWhole } from '@/lib/register/queries/records-after';
import { answerOfSet } from '../answers';
import { askedBy } from '../asked-by';
import { tagOf } from '../entity-tag';
import { valueSent } from '../json-sent';
import { onceSent } from '../once-sent';
import { listSetsOp, makeSetOp } from '../operations/register';
import { keysOf, placeOf } from '../place-in-list';
import { answer, problem } from '../problem';
import { querySent } from '../query-sent';
import { newSetOf } from '../record-of';

export const GET = (request: Request) =>
  askedBy(request, listSetsOp.action, async (actor) => {
    const asked = querySent(request, listSetsOp.query);
    if (asked instanceof Response) return asked;
    const keys = keysOf(asked.after, 1);
    if (keys instanceof Response) return keys;
    const take = asked.limit ?? 50;
    const sets = await setsAfter(actor, { q: asked.q ?? null, after: keys[0] ?? null, take: take + 1 });
    const last = sets.length > take ? sets[take - 1] : undefined;
    return answer({
      items: sets.slice(0, take).map(answerOfSet),
      next: last === undefined ? null : placeOf([String(last.state.tag)]),
    });
  });

export const POST = (request: Request) =>
  askedBy(request, makeSetOp.action, async (actor) => {
    const sent = await valueSent(request, makeSetOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(makeSetOp.body.schema, sent.value);
    if (!told.ok) return problem(422, 'The set cannot be entered as it stands.', told.problems);
    return onceSent(request, actor, sent.text, async (tx) => {
      const done = await registerSetsIn(tx, actor, [newSetOf(sent.value as Record<string, unknown>)]);
      if (done.outcome === 'refused')
        return {
          status: 422,
          title: 'The set cannot be entered as it stands.',
          problems: done.problems.map((one) => ({ ...one, path: one.path.replace(/^0\./, '') })),
        };
      const [id = ''] = done.ids.values();
      const made = (await setsWhole(tx, actor.siteId, [id])).get(id);
      if (made === undefined) throw new Error('a set that was entered is not there');
      const location = `/api/v1${setPath(String(made.state.tag))}`;
      const body = answerOfSet(made);
      return { status: 201, body, location, tag: tagOf(body) };
    });
  });
