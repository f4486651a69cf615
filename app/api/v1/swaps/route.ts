import { swapPath } from '@/app/paths';
import { type Problem, read } from '@/lib/plant/reading';
import { recordJudgedSwap } from '@/lib/register/commands/record-judged-swap';
import { swapRequest } from '@/lib/register/commands/swap-request';
import { askedBy } from '../asked-by';
import { valueSent } from '../json-sent';
import { recordSwapOp } from '../operations/register';
import { answer, problem } from '../problem';

/** Records a swap, judged here. Its Idempotency-Key is the swap's own: it is recorded once. */
export const POST = (request: Request) =>
  askedBy(request, recordSwapOp.action, async (actor) => {
    const sent = await valueSent(request, recordSwapOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(recordSwapOp.body.schema, sent.value);
    if (!told.ok) return refused(told.problems);
    const asked = read(swapRequest, { ...(sent.value as object), key: request.headers.get('idempotency-key') });
    if (!asked.ok) return problem(400, 'Idempotency-Key must be a UUID of your own making.');
    const done = await recordJudgedSwap(actor, asked.value, false);
    switch (done.outcome) {
      case 'saved':
        return answer({ swapId: done.swapId, verdict: done.verdict }, 201, { location: swapPath(done.swapId) });
      case 'taken': {
        const { what, by, setTag: at, motorNumber: held } = done;
        const stands = what === 'motor' ? `the motor is in ${at ?? 'no set'}` : `the set holds ${held ?? 'no motor'}`;
        return problem(409, `${by ?? 'Somebody'} was first: ${stands}.`);
      }
      case 'refused':
        return refused(
          done.problems.map((one) => ({ ...one, path: one.path === 'key' ? 'Idempotency-Key' : one.path })),
        );
    }
  });

const refused = (problems: readonly Problem[]) => problem(422, 'The swap cannot be recorded as it stands.', problems);
