import { motorPath } from '@/app/paths';
import { read } from '@/lib/plant/reading';
import { registerMotorsIn } from '@/lib/register/commands/register-motors';
import { motorsAfter, motorsWhole } from '@/lib/register/queries/records-after';
import { answerOfMotor } from '../answers';
import { askedBy } from '../asked-by';
import { tagOf } from '../entity-tag';
import { valueSent } from '../json-sent';
import { onceSent } from '../once-sent';
import { listMotorsOp, makeMotorOp } from '../operations/register';
import { keysOf, placeOf } from '../place-in-list';
import { answer, problem } from '../problem';
import { querySent } from '../query-sent';
import { newMotorOf } from '../record-of';

export const GET = (request: Request) =>
  askedBy(request, listMotorsOp.action, async (actor) => {
    const asked = querySent(request, listMotorsOp.query);
    if (asked instanceof Response) return asked;
    const keys = keysOf(asked.after, 1);
    if (keys instanceof Response) return keys;
    const take = asked.limit ?? 50;
    const motors = await motorsAfter(actor, {
      q: asked.q ?? null,
      place: asked.place ?? null,
      after: keys[0] ?? null,
      take: take + 1,
    });
    const last = motors.length > take ? motors[take - 1] : undefined;
    return answer({
      items: motors.slice(0, take).map(answerOfMotor),
      next: last === undefined ? null : placeOf([String(last.state.id)]),
    });
  });

export const POST = (request: Request) =>
  askedBy(request, makeMotorOp.action, async (actor) => {
    const sent = await valueSent(request, makeMotorOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(makeMotorOp.body.schema, sent.value);
    if (!told.ok) return problem(422, 'The motor cannot be entered as it stands.', told.problems);
    return onceSent(request, actor, sent.text, async (tx) => {
      const done = await registerMotorsIn(tx, actor, [newMotorOf(sent.value as Record<string, unknown>)]);
      if (done.outcome === 'refused')
        return {
          status: 422,
          title: 'The motor cannot be entered as it stands.',
          problems: done.problems.map((one) => ({ ...one, path: one.path.replace(/^0\./, '') })),
        };
      const [id = ''] = done.ids.values();
      const made = (await motorsWhole(tx, actor.siteId, [id])).get(id);
      if (made === undefined) throw new Error('a motor that was entered is not there');
      const location = `/api/v1${motorPath(String(made.state.id))}`;
      const body = answerOfMotor(made);
      return { status: 201, body, location, tag: tagOf(body) };
    });
  });
