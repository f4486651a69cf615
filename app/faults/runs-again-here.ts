'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { closeFault } from '@/lib/register/commands/close-fault';
import { refused } from '@/lib/register/commands/refused';
import { answerAskOf } from '../answer-ask';
import type { AskState } from '../ask-state';

const LABELS = { setId: 'The set', faultId: 'The fault', how: 'What was done', to: 'The page' };

/** Closes the faults by a repair, and goes back to the page. */
export const runsAgainHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, LABELS, 'fault.close', async (actor, { one }) => {
    const told = (name: string) => (one(name) === '' ? null : one(name));
    const done = await closeFault(actor, { setId: told('setId'), faultId: told('faultId'), how: one('how') });
    if (done.outcome === 'refused') return done;
    if (done.outcome === 'closed-before') return refused('form', 'is no fault that is still open');
    revalidatePath('/', 'layout');
    redirect(returnPath(one('to')));
  });
