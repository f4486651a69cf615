'use server';

import { revalidatePath } from 'next/cache';
import type { Actor } from '@/lib/auth/may';
import { anonymisePerson } from '@/lib/register/commands/anonymise-person';
import { bringBackPerson } from '@/lib/register/commands/bring-back-person';
import { changeRole } from '@/lib/register/commands/change-role';
import { endOtherSessions } from '@/lib/register/commands/end-other-sessions';
import { endSession } from '@/lib/register/commands/end-session';
import { invitePerson } from '@/lib/register/commands/invite-person';
import { resetPasswordLink } from '@/lib/register/commands/reset-password-link';
import { retirePerson } from '@/lib/register/commands/retire-person';
import { revokeLink } from '@/lib/register/commands/revoke-link';
import { answerAskOf, type Done } from '../answer-ask';
import type { AskState } from '../ask-state';
import { linkHere } from '../link-here';
import { ROLE_WORDS, readRole } from '../role-words';
import { sessionHere } from '../who-is-here';

const PERSON = { userId: 'The person' };
const SURE = { ...PERSON, sure: 'The tick' };

export const inviteHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(
    form,
    { name: 'The name', email: 'The e-mail', role: 'The role' },
    'people.manage',
    async (actor, { one }) => {
      const role = readRole(one('role'));
      if (role === null) return wrong('role', 'must be one of the list');
      const done = await invitePerson(actor, { name: one('name'), email: one('email'), role });
      if (done.outcome === 'refused') return done;
      revalidatePath('/people');
      return {
        outcome: 'told',
        says: 'Give this link to the person invited, and to nobody else. It works once, within an hour.',
        secret: await linkHere(`/join/${done.secret}`),
      };
    },
  );

export const resetHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, PERSON, 'people.manage', async (actor, { one }) => {
    const done = await resetPasswordLink(actor, one('userId'));
    if (done.outcome === 'refused') return done;
    revalidatePath('/people', 'layout');
    return {
      outcome: 'told',
      says: 'Give this link to the person, and to nobody else. It works once, within an hour, and ends their sessions.',
      secret: await linkHere(`/reset/${done.secret}`),
    };
  });

export const revokeLinkHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { linkId: 'The link' }, 'people.manage', async (actor, { one }) =>
    saved(await revokeLink(actor, one('linkId')), 'Revoked.'),
  );

export const changeRoleHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { ...PERSON, from: 'The role', role: 'The role' }, 'people.manage', async (actor, { one }) => {
    const [from, to] = [readRole(one('from')), readRole(one('role'))];
    if (from === null || to === null) return wrong('role', 'must be one of the list');
    const done = await changeRole(actor, { userId: one('userId'), from, to });
    if (done.outcome !== 'stale') return saved(done, 'Saved. Their sessions and tokens have ended.');
    revalidatePath('/people', 'layout');
    return wrong('role', `was changed in between by somebody else, to ${ROLE_WORDS[done.role]}: look, then send again`);
  });

export const retireHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  ifSure(form, retirePerson, 'Retired.');

export const anonymiseHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  ifSure(form, anonymisePerson, 'No longer named.');

export const bringBackHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, PERSON, 'people.manage', async (actor, { one }) =>
    saved(await bringBackPerson(actor, one('userId')), 'The person may sign in again.'),
  );

export const endSessionHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, { sessionId: 'The session' }, 'self.manage', async (actor, { one }) =>
    saved(await endSession(actor, one('sessionId')), 'Ended.'),
  );

export const endSessionsHere = async (_before: AskState, form: FormData): Promise<AskState> =>
  answerAskOf(form, PERSON, 'self.manage', async (actor, { one }) => {
    // One's own session, by which this is asked, goes on.
    const keep = (await sessionHere())?.sessionId ?? '';
    return saved(await endOtherSessions(actor, { of: one('userId'), keep }), 'Ended.');
  });

/** What cannot be undone lightly is asked for with a tick. */
const ifSure = (
  form: FormData,
  command: (actor: Actor, userId: string) => Promise<Parameters<typeof saved>[0]>,
  says: string,
) =>
  answerAskOf(form, SURE, 'people.manage', async (actor, { one }) =>
    one('sure') === 'yes'
      ? saved(await command(actor, one('userId')), says)
      : wrong('sure', 'is missing: nothing was done'),
  );

function saved(done: { outcome: 'saved' } | Extract<Done, { outcome: 'refused' }>, says: string): Done {
  if (done.outcome === 'refused') return done;
  revalidatePath('/', 'layout');
  return { outcome: 'saved', says };
}

const wrong = (path: string, says: string): Done => ({ outcome: 'refused', problems: [{ path, value: null, says }] });
