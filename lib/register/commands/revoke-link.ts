import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isId } from '../is-id';
import { waiting } from '../person-link';
import { type Refused, refused } from './refused';

/** Takes back a link of the own site that nobody has used yet. */
export async function revokeLink(actor: Actor, linkId: string): Promise<{ outcome: 'saved' } | Refused> {
  must(actor, 'people.manage');
  const { siteId } = actor;
  return db.$transaction(async (tx) => {
    const where = { siteId, id: linkId, ...waiting() };
    const { count } = isId(linkId)
      ? await tx.personLink.updateMany({ where, data: { revokedAt: new Date() } })
      : { count: 0 };
    if (count === 0) return refused('linkId', 'is no link that waits');
    await record(tx, actor, { action: 'person.link-revoke', thing: 'link', thingId: linkId });
    return { outcome: 'saved' };
  });
}
