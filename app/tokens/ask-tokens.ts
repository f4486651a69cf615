'use server';

import { revalidatePath } from 'next/cache';
import { SCOPES } from '@/lib/auth/scopes';
import { makeToken } from '@/lib/register/commands/make-token';
import { revokeToken } from '@/lib/register/commands/revoke-token';
import { readNumber } from '@/lib/units/read-number';
import { answerAskOf } from '../answer-ask';
import type { AskState } from '../ask-state';

const LABELS = { name: 'The name', scopes: 'What it may do', days: 'The days', ownerId: 'The person' };

/** Makes a token. Its secret stands in this answer, and nowhere again. */
export const makeTokenHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, LABELS, 'token.manage', async (actor, { one, all }) => {
    const days = readNumber(one('days'), { min: 0, max: 100_000 });
    const done = await makeToken(actor, {
      name: one('name'),
      scopes: SCOPES.filter((scope) => all('scopes').includes(scope)),
      days: days.ok ? days.value : Number.NaN,
      ownerId: one('ownerId'),
    });
    if (done.outcome === 'refused') return done;
    revalidatePath('/tokens');
    return {
      outcome: 'told',
      says: 'Copy it to the program now: it is kept as a sum only. Whoever has it asks as its person does.',
      secret: done.secret,
    };
  });

export const revokeTokenHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { tokenId: 'The token' }, 'token.manage', async (actor, { one }) => {
    const done = await revokeToken(actor, one('tokenId'));
    if (done.outcome === 'refused') return done;
    revalidatePath('/tokens');
    return { outcome: 'saved', says: 'Revoked.' };
  });
