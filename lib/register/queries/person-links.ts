import { type Actor, must, type Role } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { waiting } from '../person-link';

export interface WaitingLink {
  linkId: string;
  purpose: 'invite' | 'reset';
  /** Whom it was made for. */
  name: string;
  role: Role | null;
  expiresAt: Date;
}

/** The links of the site that nobody has used yet, the one that ends first first. What they are is told by none. */
export async function personLinks(actor: Actor): Promise<WaitingLink[]> {
  must(actor, 'people.manage');
  const { siteId } = actor;
  const links = await db.personLink.findMany({
    where: { siteId, ...waiting() },
    orderBy: [{ expiresAt: 'asc' }, { id: 'asc' }],
    take: 200,
    select: { id: true, purpose: true, name: true, role: true, expiresAt: true, user: { select: { name: true } } },
  });
  return links.flatMap(({ id, purpose, name, role, expiresAt, user }) => {
    const whom = user?.name ?? name;
    if (whom === null) return [];
    return { linkId: id, purpose: purpose as WaitingLink['purpose'], name: whom, role: role as Role | null, expiresAt };
  });
}
