'use server';

import { redirect } from 'next/navigation';
import { acceptInvitation } from '@/lib/register/commands/accept-invitation';
import { resetByLink } from '@/lib/register/commands/reset-by-link';
import { answerAsk } from './answer-ask';
import type { AskState } from './ask-state';

/** The address stands in the form for the browser's list of passwords alone. */
const LABELS = { link: 'The link', email: 'The address', password: 'The password' };
const SAVED = { outcome: 'saved', says: '' } as const;

/** Takes an invitation up. This, and not the looking, uses the link up. */
export async function joinHere(_before: AskState, form: FormData): Promise<AskState> {
  const state = await answerAsk(form, LABELS, async ({ one }) => {
    const done = await acceptInvitation(one('link'), one('password'));
    return done.outcome === 'saved' ? SAVED : done;
  });
  if (state.outcome === 'saved') redirect('/sign-in?told=password');
  return state;
}

/** Gives the new password typed at a reset link. */
export async function resetByLinkHere(_before: AskState, form: FormData): Promise<AskState> {
  const state = await answerAsk(form, LABELS, async ({ one }) => {
    const done = await resetByLink(one('link'), one('password'));
    return done.outcome === 'saved' ? SAVED : done;
  });
  if (state.outcome === 'saved') redirect('/sign-in?told=password');
  return state;
}
