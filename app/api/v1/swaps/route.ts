import { today } from '@/app/moment';
import { swapPath } from '@/app/paths';
import { candidateFor } from '@/app/sets/[tag]/candidate-for';
import type { Actor } from '@/lib/auth/may';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { type Problem, read } from '@/lib/plant/reading';
import { recordSwap, type SwapOutcome } from '@/lib/register/commands/record-swap';
import { swapBefore } from '@/lib/register/commands/swap-before';
import { type SwapRequest, swapRequest } from '@/lib/register/commands/swap-request';
import { motorNumber } from '@/lib/register/queries/motor-number';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setTag } from '@/lib/register/queries/set-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
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
    // Before anything is judged: since it was recorded, the motors stand elsewhere.
    const done = (await swapBefore(actor, asked.value)) ?? (await judgedAndRecorded(actor, asked.value));
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

async function judgedAndRecorded(actor: Actor, asked: SwapRequest): Promise<SwapOutcome> {
  const { setId, motorInId, note } = asked;
  const not = (path: string, value: string | null, says: string): SwapOutcome => ({
    outcome: 'refused',
    problems: [{ path, value, says }],
  });
  const [tag, number] = await Promise.all([setTag(actor, setId), motorNumber(actor, motorInId)]);
  if (tag === null) return not('setId', setId, 'is not a set of this site');
  if (number === null) return not('motorInId', motorInId, 'is not a motor of this site');
  const known = await setByTag(actor, tag);
  const here = known && (await candidateFor(actor, known, number));
  if (known === null || here === null) return not('motorInId', motorInId, 'cannot be judged for this set');
  const { settings, timezone } = await siteSettings(actor);
  const result = judgeAlone(here.candidate, known.set, settings, today(timezone));
  if (result.verdict === 'unsuitable' && note === null && here.unoffered !== 'in-this-set')
    return not('note', null, 'is missing: the judgement says unsuitable; say who decided otherwise, and why');
  return recordSwap(actor, asked, result);
}
