import { type Actor, must } from '@/lib/auth/may';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { candidateFor } from '../candidate-for';
import { motorNumber } from '../queries/motor-number';
import { setByTag } from '../queries/set-by-tag';
import { setTag } from '../queries/set-tag';
import { siteSettings } from '../queries/site-settings';
import { today } from '../today';
import { recordSwap, type SwapOutcome } from './record-swap';
import { refused } from './refused';
import { swapBefore } from './swap-before';
import type { SwapRequest } from './swap-request';

/**
 * Records a swap with the judgement of the register as it stands; one that was sent before is answered as it was then.
 * `isDone`: the motor is in already, so that a judgement of unsuitable is kept and refuses nothing; otherwise such a
 * motor goes in only with a note of who decided.
 */
export async function recordJudgedSwap(actor: Actor, asked: SwapRequest, isDone: boolean): Promise<SwapOutcome> {
  must(actor, 'swap.record');
  // Before anything is judged: since it was recorded, the motors stand elsewhere.
  const before = await swapBefore(actor, asked);
  if (before !== null) return before;
  const { setId, motorInId, note } = asked;
  const [tag, number] = await Promise.all([setTag(actor, setId), motorNumber(actor, motorInId)]);
  if (tag === null) return not('setId', setId, 'is not a set of this site');
  if (number === null) return not('motorInId', motorInId, 'is not a motor of this site');
  const known = await setByTag(actor, tag);
  const here = known && (await candidateFor(actor, known, number));
  if (known === null || here === null) return not('motorInId', motorInId, 'cannot be judged for this set');
  const { settings, timezone } = await siteSettings(actor);
  const result = judgeAlone(here.candidate, known.set, settings, today(timezone));
  if (result.verdict === 'unsuitable' && note === null && !isDone && here.unoffered !== 'in-this-set')
    return refused('note', 'is missing: the judgement says unsuitable; say who decided otherwise, and why');
  return recordSwap(actor, asked, result);
}

const not = (path: string, value: string, says: string): SwapOutcome => ({
  outcome: 'refused',
  problems: [{ path, value, says }],
});
