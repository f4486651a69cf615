import type { Entry } from '@/lib/audit/record';
import type { Actor, Role } from '@/lib/auth/may';
import type { Tx } from '@/lib/db/client';
import { waiting } from '../person-link';
import { refused } from './refused';

export const NOBODY = refused('userId', 'is nobody of this site');
export const LAST = refused('userId', 'is the last administrator: make somebody else one first');

export interface PersonRow {
  id: string;
  role: Role;
  email: string;
  retiredAt: Date | null;
}

/**
 * A person of the actor's own site, for changing; null when there is none. The site's row is held to the end of the
 * transaction: of two administrators who take the role from each other at once, one is the last.
 */
export async function personStep(tx: Tx, { siteId }: Actor, userId: string): Promise<PersonRow | null> {
  await tx.$queryRaw`SELECT id FROM site WHERE id = ${siteId}::uuid FOR NO KEY UPDATE`;
  const row = await tx.user.findFirst({
    where: { siteId, id: userId },
    select: { id: true, role: true, email: true, retiredAt: true },
  });
  return row && { ...row, role: row.role as Role }; // the column holds no other (user_role_known)
}

export async function isLastAdministrator(tx: Tx, { siteId }: Actor, { id, role }: PersonRow): Promise<boolean> {
  if (role !== 'administrator') return false;
  return (await tx.user.count({ where: { siteId, role, retiredAt: null, id: { not: id } } })) === 0;
}

/** Ends every session of a person; how many there were. */
export async function endSessions(tx: Tx, userId: string): Promise<number> {
  return (await tx.session.deleteMany({ where: { userId } })).count;
}

/** Ends what acts in a person's name without them: their tokens, and the links they made or were given. */
export async function endProxies(tx: Tx, { siteId }: Actor, userId: string): Promise<Entry[]> {
  const revokedAt = new Date();
  const live = { siteId, userId, revokedAt: null };
  const tokens = await tx.apiToken.findMany({ where: live, select: { id: true } });
  await tx.apiToken.updateMany({ where: live, data: { revokedAt } });
  const ofTheirs = { siteId, ...waiting(), OR: [{ userId }, { byId: userId }] };
  const links = await tx.personLink.findMany({ where: ofTheirs, select: { id: true } });
  await tx.personLink.updateMany({ where: ofTheirs, data: { revokedAt } });
  return [
    ...tokens.map(({ id }) => ({ action: 'token.revoke', thing: 'token', thingId: id })),
    ...links.map(({ id }) => ({ action: 'person.link-revoke', thing: 'link', thingId: id })),
  ];
}
