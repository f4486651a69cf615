import { read } from '@/lib/plant/reading';
import { registerShelfIn } from '@/lib/register/commands/register-place';
import { shelfKnown, shelvesAfter } from '@/lib/register/queries/places-after';
import { askedBy } from '../asked-by';
import { valueSent } from '../json-sent';
import { onceSent } from '../once-sent';
import { listShelvesOp, makeShelfOp } from '../operations/register';
import { keysOf, placeOf } from '../place-in-list';
import { answer, problem } from '../problem';
import { querySent } from '../query-sent';

export const GET = (request: Request) =>
  askedBy(request, listShelvesOp.action, async (actor) => {
    const asked = querySent(request, listShelvesOp.query);
    if (asked instanceof Response) return asked;
    const keys = keysOf(asked.after, 2);
    if (keys instanceof Response) return keys;
    const [store, shelf] = keys;
    const after = store === undefined || shelf === undefined ? null : ([store, shelf] as const);
    const take = asked.limit ?? 50;
    const shelves = await shelvesAfter(actor, after, take + 1);
    const last = shelves.length > take ? shelves[take - 1] : undefined;
    return answer({
      items: shelves.slice(0, take),
      next: last === undefined ? null : placeOf([last.store, last.name]),
    });
  });

export const POST = (request: Request) =>
  askedBy(request, makeShelfOp.action, async (actor) => {
    const sent = await valueSent(request, makeShelfOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(makeShelfOp.body.schema, sent.value);
    if (!told.ok) return problem(422, 'The shelf cannot be added as it stands.', told.problems);
    const { storeId, name } = told.value;
    return onceSent(request, actor, sent.text, async (tx) => {
      const done = await registerShelfIn(tx, actor, storeId, name);
      if (done.outcome === 'refused')
        return { status: 422, title: 'The shelf cannot be added as it stands.', problems: done.problems };
      return { status: 201, body: await shelfKnown(tx, actor, done.id) };
    });
  });
