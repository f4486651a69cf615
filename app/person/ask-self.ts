'use server';

import { revalidatePath } from 'next/cache';
import { changeOwnPassword } from '@/lib/register/commands/change-own-password';
import { changeOwnUnits, UNITS } from '@/lib/register/commands/change-own-units';
import { answerAskOf } from '../answer-ask';
import type { AskState } from '../ask-state';
import { sessionHere } from '../who-is-here';

export const changePasswordHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(
    form,
    { old: 'The old password', password: 'The new password' },
    'self.manage',
    async (actor, { one }) => {
      // It goes on when all others end.
      const sessionId = (await sessionHere())?.sessionId ?? '';
      const done = await changeOwnPassword(actor, { sessionId, old: one('old'), password: one('password') });
      if (done.outcome === 'refused') return done;
      revalidatePath('/person');
      return { outcome: 'saved', says: 'Your password is changed. You are signed in here alone.' };
    },
  );

export const changeUnitsHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { units: 'The units' }, 'self.manage', async (actor, { one }) => {
    const typed = one('units');
    const units = UNITS.find((known) => known === typed);
    if (units === undefined)
      return { outcome: 'refused', problems: [{ path: 'units', value: null, says: 'must be one of the list' }] };
    const done = await changeOwnUnits(actor, units);
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    return { outcome: 'saved', says: 'Saved.' };
  });
