import { today } from '@/app/moment';
import { swapPath } from '@/app/paths';
import { candidateFor, judgeAlone } from '@/app/sets/[tag]/candidate-for';
import { read } from '@/lib/plant/reading';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { swapRequest } from '@/lib/register/commands/swap-request';
import { motorNumber } from '@/lib/register/queries/motor-number';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setTag } from '@/lib/register/queries/set-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { askedBy } from '../asked-by';
import { valueSent } from '../json-sent';
import { newSwap, recordSwapOp } from '../operations/register';
import { answer, problem } from '../problem';

const NOT_SO = 'The swap cannot be recorded as it stands.';

/** Records a swap, judged here. Its Idempotency-Key is the swap's own: it is recorded once. */
export const POST = (request: Request) =>
  askedBy(request, 'swap.record', async (actor) => {
    const sent = await valueSent(request, recordSwapOp.body.types);
    if (sent instanceof Response) return sent;
    const told = read(newSwap, sent.value);
    if (!told.ok) return problem(422, NOT_SO, told.problems);
    const key = request.headers.get('idempotency-key');
    const asked = read(swapRequest, { ...(sent.value as object), key });
    if (!asked.ok) return problem(400, 'Idempotency-Key must be a UUID of your own making.');
    const { setId, motorInId, note } = asked.value;
    const [tag, number] = await Promise.all([setTag(actor, setId), motorNumber(actor, motorInId)]);
    const refused = (path: string, value: string | null, says: string) => problem(422, NOT_SO, [{ path, value, says }]);
    if (tag === null) return refused('setId', setId, 'is not a set of this site');
    if (number === null) return refused('motorInId', motorInId, 'is not a motor of this site');
    const known = await setByTag(actor, tag);
    const here = known && (await candidateFor(actor, known, number));
    if (known === null || here === null) return refused('motorInId', motorInId, 'cannot be judged for this set');
    const { settings, timezone } = await siteSettings(actor);
    const result = judgeAlone(here.candidate, known, settings, today(timezone));
    if (result.verdict === 'unsuitable' && note === null && here.unoffered !== 'in-this-set')
      return refused('note', null, 'is missing: the judgement says unsuitable; say who decided otherwise, and why');
    const done = await recordSwap(actor, asked.value, result);
    switch (done.outcome) {
      case 'saved':
        return answer({ swapId: done.swapId, verdict: result.verdict }, 201, { location: swapPath(done.swapId) });
      case 'taken': {
        const { what, by, setTag: at, motorNumber: held } = done;
        const who = by ?? 'Somebody';
        return problem(
          409,
          `${who} was first: ${what === 'motor' ? `the motor is in ${at ?? 'no set'}` : `the set holds ${held ?? 'no motor'}`}.`,
        );
      }
      case 'refused':
        // A repeat with another body is told as such: nothing was recorded for it.
        return problem(422, NOT_SO, done.problems);
    }
  });
