import { db } from '@/lib/db/client';
import { usableLink } from '../person-link';

export interface OpenLink {
  name: string;
  email: string;
  site: string;
}

/** Whom a link that can still be used is for. Who holds it asks, signed in or not; asking uses nothing up. */
export async function linkBySecret(secret: string, purpose: 'invite' | 'reset'): Promise<OpenLink | null> {
  const where = usableLink(secret, purpose);
  if (where === null) return null;
  const link = await db.personLink.findFirst({
    where,
    select: {
      name: true,
      email: true,
      site: { select: { name: true } },
      user: { select: { name: true, email: true, retiredAt: true } },
    },
  });
  if (link === null || (link.user !== null && link.user.retiredAt !== null)) return null;
  const { name, email } = link.user ?? link;
  return name === null || email === null ? null : { name, email, site: link.site.name };
}
