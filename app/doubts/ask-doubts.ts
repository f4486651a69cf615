'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { acceptDoubt } from '@/lib/register/commands/accept-doubt';
import { withdrawAcceptance } from '@/lib/register/commands/withdraw-acceptance';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answerAskOf } from '../answer-ask';
import type { AskState } from '../ask-state';
import { today } from '../moment';
import { oneLine } from '../paths';

const ACCEPTED = {
  ...{ thing: 'The record', thingId: 'The record', rule: 'The rule', figures: 'The figures', back: 'The page' },
  ...{ doubt: 'The doubt', reason: 'The reason', againOn: 'The day' },
};

/** Lets a doubt stand, and goes back to the list it was read in. Refused, it keeps what was typed. */
export const acceptDoubtHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, ACCEPTED, 'doubt.accept', async (actor, { one }) => {
    const thing = one('thing');
    if (thing !== 'set' && thing !== 'motor') return refusedThing;
    const { timezone } = await siteSettings(actor);
    const againOn = one('againOn').trim();
    const done = await acceptDoubt(
      actor,
      {
        thing,
        thingId: one('thingId'),
        rule: one('rule'),
        figures: one('figures'),
        reason: oneLine(one('reason')),
        againOn: againOn === '' ? null : againOn,
      },
      today(timezone),
    );
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    redirect(said(one('back'), 'accepted'));
  });

/** Takes an acceptance back, and goes back to the list. */
export const withdrawHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { acceptance: 'The acceptance', back: 'The page' }, 'doubt.accept', async (actor, { one }) => {
    const done = await withdrawAcceptance(actor, one('acceptance'));
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    redirect(said(one('back'), 'withdrawn'));
  });

const refusedThing = {
  outcome: 'refused' as const,
  problems: [{ path: 'thing', value: null, says: 'must be a set or a motor' }],
};

/** The page the form stood on, told what came of it. */
function said(back: string, what: 'accepted' | 'withdrawn'): string {
  const path = returnPath(back);
  return `${path}${path.includes('?') ? '&' : '?'}doubt=${what}`;
}
