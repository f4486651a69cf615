'use server';

import { redirect } from 'next/navigation';
import { momentText, today } from '@/app/moment';
import { oneLine, swapPath } from '@/app/paths';
import { refusedByRole } from '@/app/refused-by-role';
import { SIGNED_OUT } from '@/app/signed-out';
import { whoDoes } from '@/app/who-is-here';
import type { Actor } from '@/lib/auth/may';
import { isDatabaseGone } from '@/lib/db/database-gone';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { read } from '@/lib/plant/reading';
import { candidateFor } from '@/lib/register/candidate-for';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { swapRequest } from '@/lib/register/commands/swap-request';
import type { Taken } from '@/lib/register/commands/who-was-first';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { workItems } from '../../work-items';
import { quantitiesOf, valuesOf } from './read-swap-form';
import { requestOf } from './request-of';
import { problemsOf } from './swap-problems';
import type { SwapState } from './swap-state';

/** Records the swap as told in the form, judged anew on the server. Nothing typed is lost, whatever comes of it. */
export async function recordSwapHere(_before: SwapState, form: FormData): Promise<SwapState> {
  const [tag, number] = [textOf(form, 'tag'), textOf(form, 'motor')];
  const values = valuesOf(form);
  let swapId: string;
  try {
    const actor = await whoDoes('swap.record');
    if (actor === null) return { outcome: 'away', values, says: SIGNED_OUT };
    const done = await record(actor, tag, number, form);
    if (typeof done !== 'string') return done;
    swapId = done;
  } catch (error) {
    if (isDatabaseGone(error)) return { outcome: 'away', values, says: DATABASE_AWAY };
    const says = refusedByRole(error);
    if (says === null) throw error;
    return { outcome: 'away', values, says };
  }
  redirect(swapPath(swapId));
}

/** The swap's id, or what became of it instead. */
async function record(actor: Actor, tag: string, number: string, form: FormData): Promise<string | SwapState> {
  const values = valuesOf(form);
  const known = await setByTag(actor, tag);
  if (known === null) return refused('motor', 'The set is not in the register of this site.');
  const here = await candidateFor(actor, known, number);
  if (here === null || here.known === null) return refused('motor', 'The motor is not in the register of this site.');
  const { settings, timezone } = await siteSettings(actor);
  const asOf = today(timezone);
  const result = judgeAlone(here.candidate, known.set, settings, asOf);
  const { quantities, problems } = quantitiesOf(values);
  const told = {
    setId: known.row.id,
    motorInId: here.known.whereabouts.motorId,
    motorOutId: textOf(form, 'motorOutId') || null,
    fromSetId: textOf(form, 'fromSetId') || null,
  };
  const work = workItems(result, here.candidate.motor, settings, asOf);
  const wrong = [...problems, ...problemsOf(values, { ...told, verdict: result.verdict })];
  const request = read(swapRequest, requestOf(values, quantities, told, work, result.findings));
  if (wrong.length > 0 || !request.ok)
    return {
      outcome: 'refused',
      values,
      problems: wrong.length > 0 || request.ok ? wrong : request.problems.map(({ path, says }) => ({ path, says })),
    };
  const done = await recordSwap(actor, request.value, result);
  switch (done.outcome) {
    case 'saved':
      return done.swapId;
    case 'taken':
      return { outcome: 'taken', values, says: takenWords(done), when: done.at && momentText(done.at, timezone) };
    case 'refused':
      return {
        outcome: 'refused',
        values,
        problems: done.problems.map(({ path, says }) => ({ path, says: `It ${says}.` })),
      };
  }

  function refused(path: string, says: string): SwapState {
    return { outcome: 'refused', values, problems: [{ path, says }] };
  }
}

const DATABASE_AWAY =
  'The register’s database does not answer. Nothing was recorded; what you typed stands below. Send it again in a minute: it is recorded once, however often it is sent.';

function takenWords({ what, by, setTag, motorNumber }: Taken): string {
  const who = by ?? 'Somebody';
  if (what === 'motor')
    return setTag === null ? `${who} has moved this motor away.` : `${who} has put this motor into ${setTag}.`;
  return motorNumber === null
    ? `${who} has taken the motor out of this set.`
    : `${who} has put ${motorNumber} into this set.`;
}

const textOf = (form: FormData, name: string) => {
  const value = form.get(name);
  return typeof value === 'string' ? oneLine(value) : '';
};
