import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { newSecret } from '@/lib/auth/new-secret';
import { db } from '@/lib/db/client';
import { read } from '@/lib/plant/reading';
import { type Invitation, invitation } from '../invitation';
import { linkTimes, waiting } from '../person-link';
import { type Refused, refused } from './refused';

/** `secret` is the end of the link: told here and never again. */
export type LinkOutcome = { outcome: 'saved'; linkId: string; secret: string; expiresAt: Date } | Refused;

/** Makes the link by which somebody comes in. An earlier one for the same address is revoked: one link waits at a time. */
export async function invitePerson(actor: Actor, asked: Invitation): Promise<LinkOutcome> {
  must(actor, 'people.manage');
  const { siteId, userId: byId } = actor;
  const told = read(invitation, asked);
  if (!told.ok) return { outcome: 'refused', problems: told.problems };
  const { name, email, role } = told.value;
  const { secret, sha256 } = newSecret();
  return db.$transaction(async (tx) => {
    // Of people elsewhere nothing is told: their invitation is refused when it is taken up.
    const known = await tx.user.findFirst({ where: { siteId, email }, select: { retiredAt: true } });
    if (known)
      return refused('email', known.retiredAt === null ? 'is a person’s here already' : 'is a retired person’s here');
    const earlier = { siteId, purpose: 'invite', email, ...waiting() };
    const revoked = await tx.personLink.findMany({ where: earlier, select: { id: true } });
    await tx.personLink.updateMany({ where: earlier, data: { revokedAt: new Date() } });
    const { id, expiresAt } = await tx.personLink.create({
      data: { siteId, purpose: 'invite', sha256, name, email, role, byId, ...linkTimes() },
    });
    await record(
      tx,
      actor,
      ...revoked.map((link) => ({ action: 'person.link-revoke', thing: 'link', thingId: link.id })),
      { action: 'person.invite', thing: 'link', thingId: id, after: { role } },
    );
    return { outcome: 'saved', linkId: id, secret, expiresAt };
  });
}
