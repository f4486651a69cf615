'use server';

import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { returnPath } from '@/lib/auth/return-path';
import { retirePicture } from '@/lib/register/commands/retire-picture';
import { answerAskOf } from '../answer-ask';
import type { AskState } from '../ask-state';
import { backTo } from './picture-words';

/** Takes a photograph out of the list, and goes back to it. */
export const retirePictureHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { pictureId: 'It', to: 'The page' }, 'picture.retire', async (actor, { one }) => {
    const done = await retirePicture(actor, one('pictureId'));
    if (done.outcome === 'refused') return done;
    revalidatePath('/', 'layout');
    redirect(backTo(returnPath(one('to')), 'retired'));
  });
