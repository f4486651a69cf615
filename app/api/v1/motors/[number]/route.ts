import { written } from '@/app/paths';
import type { Actor } from '@/lib/auth/may';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { motorWhole } from '@/lib/register/queries/records-after';
import { answerOfMotor } from '../../answers';
import { askedBy } from '../../asked-by';
import { changeSent } from '../../change-sent';
import { tagged } from '../../entity-tag';
import { changeMotorOp, readMotorOp } from '../../operations/register';
import { problem } from '../../problem';

interface Context {
  params: Promise<{ number: string }>;
}

export const GET = (request: Request, { params }: Context) =>
  askedBy(request, readMotorOp.action, async (actor) => {
    const motor = await motorNamed(actor, (await params).number);
    return motor === null ? NOT_HERE() : tagged(request, answerOfMotor(motor));
  });

export const PATCH = (request: Request, { params }: Context) =>
  askedBy(request, changeMotorOp.action, async (actor) => {
    const motor = await motorNamed(actor, (await params).number);
    if (motor === null) return NOT_HERE();
    return changeSent(request, actor, {
      ...{ thing: 'motor', operation: changeMotorOp, record: motor, asRead: answerOfMotor(motor) },
      now: async () => {
        const now = await motorWhole(actor, motor.id);
        return now === null ? null : answerOfMotor(now);
      },
    });
  });

const NOT_HERE = () => problem(404, 'There is no such motor at this site.');

/** By its plant number, in any case of letters. */
async function motorNamed(actor: Actor, number: string) {
  const known = await motorByNumber(actor, written(number));
  return known === null ? null : motorWhole(actor, known.row.id);
}
