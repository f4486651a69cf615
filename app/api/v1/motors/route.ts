import { motorPath } from '@/app/paths';
import { registerMotorsIn } from '@/lib/register/commands/register-motors';
import { motorsAfter, motorsWhole } from '@/lib/register/queries/records-after';
import { answerOfMotor } from '../answers';
import { askedBy } from '../asked-by';
import { tagOf } from '../entity-tag';
import { makeSent, ofTheOne } from '../make-sent';
import { listMotorsOp, makeMotorOp } from '../operations/register';
import { byNames, partSent } from '../part-sent';
import { newMotorOf } from '../record-of';

export const GET = (request: Request) =>
  askedBy(request, listMotorsOp.action, (actor) =>
    partSent(request, listMotorsOp, {
      isPlace: byNames(1),
      find: (behind, take, { q, place }) =>
        motorsAfter(actor, { q: q ?? null, place: place ?? null, after: behind?.[0] ?? null, take }),
      keysAt: ({ state }) => [String(state.id)],
      told: answerOfMotor,
    }),
  );

export const POST = (request: Request) =>
  askedBy(request, makeMotorOp.action, (actor) =>
    makeSent(request, actor, makeMotorOp, 'The motor cannot be entered as it stands.', async (tx, _, sent) => {
      const done = await registerMotorsIn(tx, actor, [newMotorOf(sent)]);
      if (done.outcome === 'refused') return { outcome: 'refused', problems: ofTheOne(done.problems) };
      const [id = ''] = done.ids.values();
      const made = (await motorsWhole(tx, actor.siteId, [id])).get(id);
      if (made === undefined) throw new Error('a motor that was entered is not there');
      const body = answerOfMotor(made);
      return { outcome: 'made', body, location: `/api/v1${motorPath(String(made.state.id))}`, tag: tagOf(body) };
    }),
  );
