import { setPath } from '@/app/paths';
import { registerSetsIn } from '@/lib/register/commands/register-sets';
import { setsAfter, setsWhole } from '@/lib/register/queries/records-after';
import { answerOfSet } from '../answers';
import { askedBy } from '../asked-by';
import { tagOf } from '../entity-tag';
import { makeSent, ofTheOne } from '../make-sent';
import { listSetsOp, makeSetOp } from '../operations/register';
import { byNames, partSent } from '../part-sent';
import { newSetOf } from '../record-of';

export const GET = (request: Request) =>
  askedBy(request, listSetsOp.action, (actor) =>
    partSent(request, listSetsOp, {
      isPlace: byNames(1),
      find: (behind, take, { q }) => setsAfter(actor, { q: q ?? null, after: behind?.[0] ?? null, take }),
      keysAt: ({ state }) => [String(state.tag)],
      told: answerOfSet,
    }),
  );

export const POST = (request: Request) =>
  askedBy(request, makeSetOp.action, (actor) =>
    makeSent(request, actor, makeSetOp, 'The set cannot be entered as it stands.', async (tx, _, sent) => {
      const done = await registerSetsIn(tx, actor, [newSetOf(sent)]);
      if (done.outcome === 'refused') return { outcome: 'refused', problems: ofTheOne(done.problems) };
      const [id = ''] = done.ids.values();
      const made = (await setsWhole(tx, actor.siteId, [id])).get(id);
      if (made === undefined) throw new Error('a set that was entered is not there');
      const body = answerOfSet(made);
      return { outcome: 'made', body, location: `/api/v1${setPath(String(made.state.tag))}`, tag: tagOf(body) };
    }),
  );
