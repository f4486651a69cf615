import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { type SiteSettings, siteSettings as schema } from '@/lib/plant/site-settings';

export interface KnownSite {
  name: string;
  timezone: string;
  settings: SiteSettings;
  version: number;
}

/** The actor's site and what it decided for itself. */
export async function siteSettings(actor: Actor): Promise<KnownSite> {
  must(actor, 'register.read');
  const { name, timezone, settings, version } = await db.site.findUniqueOrThrow({ where: { id: actor.siteId } });
  return { name, timezone, settings: schema.parse(settings), version };
}
