'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { acceptFinding } from '@/lib/register/commands/accept-finding';
import { withdrawFindingAcceptance } from '@/lib/register/commands/withdraw-finding-acceptance';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answerAskOf } from '../answer-ask';
import type { AskState } from '../ask-state';
import { today } from '../moment';
import { oneLine } from '../paths';

const ACCEPTED = {
  ...{ setId: 'The set', rule: 'The rule', figures: 'The figures', back: 'The page', finding: 'The finding' },
  ...{ reason: 'The reason', againOn: 'The day' },
};

/** Lets a finding stand until a day, and goes back to the list it was read in. Refused, it keeps what was typed. */
export const acceptFindingHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, ACCEPTED, 'review.accept', async (actor, { one }) => {
    const { timezone } = await siteSettings(actor);
    const asked = {
      ...{ setId: one('setId'), rule: one('rule'), figures: one('figures') },
      ...{ reason: oneLine(one('reason')), againOn: one('againOn').trim() },
    };
    const done = await acceptFinding(actor, asked, today(timezone));
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    redirect(said(one('back'), 'accepted'));
  });

/** Takes an acceptance back, and goes back to the list. */
export const withdrawFindingHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { acceptance: 'The acceptance', back: 'The page' }, 'review.accept', async (actor, { one }) => {
    const done = await withdrawFindingAcceptance(actor, one('acceptance'));
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    redirect(said(one('back'), 'withdrawn'));
  });

/** The page the form stood on, told what came of it. */
function said(back: string, what: 'accepted' | 'withdrawn'): string {
  const path = returnPath(back);
  return `${path}${path.includes('?') ? '&' : '?'}said=${what}`;
}
