import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { newSecret } from '@/lib/auth/new-secret';
import { db } from '@/lib/db/client';
import { linkTimes, waiting } from '../person-link';
import type { LinkOutcome } from './invite-person';
import { NOBODY, personStep } from './person-step';
import { refused } from './refused';

/** Makes the link by which a person of the site gets a new password. An earlier one of theirs is revoked. */
export async function resetPasswordLink(actor: Actor, userId: string): Promise<LinkOutcome> {
  must(actor, 'people.manage');
  const { siteId, userId: byId } = actor;
  const { secret, sha256 } = newSecret();
  return db.$transaction(async (tx) => {
    const person = await personStep(tx, actor, userId);
    if (person === null) return NOBODY;
    if (person.retiredAt !== null) return refused('userId', 'is retired: bring the person back first');
    const earlier = { siteId, purpose: 'reset', userId, ...waiting() };
    const revoked = await tx.personLink.findMany({ where: earlier, select: { id: true } });
    await tx.personLink.updateMany({ where: earlier, data: { revokedAt: new Date() } });
    const { id, expiresAt } = await tx.personLink.create({
      data: { siteId, purpose: 'reset', sha256, userId, byId, ...linkTimes() },
    });
    await record(
      tx,
      actor,
      ...revoked.map((link) => ({ action: 'person.link-revoke', thing: 'link', thingId: link.id })),
      { action: 'person.reset-link', thing: 'person', thingId: userId, after: { linkId: id } },
    );
    return { outcome: 'saved', linkId: id, secret, expiresAt };
  });
}
