import { NO_SITE, record } from '@/lib/audit/record';
import { db } from '@/lib/db/client';
import type { Actor } from './may';

type Event = 'person.sign-in' | 'person.sign-in-refused' | 'person.locked-out';

/** Leaves a row of a sign-in, whichever way it went. What was typed is kept only when it is an account of ours. */
export async function noteSignIn(email: string, action: Event): Promise<void> {
  const user = await db.user.findUnique({
    where: { email: email.trim().toLowerCase() },
    select: { id: true, siteId: true },
  });
  const by = user ? { siteId: user.siteId, userId: user.id } : { siteId: NO_SITE, userId: null };
  await record(db, by, { action, thing: 'person', thingId: by.userId });
}

export const noteSignOut = ({ siteId, userId }: Actor): Promise<void> =>
  record(db, { siteId, userId }, { action: 'person.sign-out', thing: 'person', thingId: userId });
