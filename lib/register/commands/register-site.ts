import { record } from '@/lib/audit/record';
import { db } from '@/lib/db/client';
import { type SiteSettings, siteSettings } from '@/lib/plant/site-settings';

export interface NewSite {
  name: string;
  /** IANA name. */
  timezone: string;
  settings: SiteSettings;
}

/** Adds a site. Nobody can be signed in for it yet, so it is the program that asks. */
export async function registerSite({ name, timezone, settings }: NewSite): Promise<string> {
  new Intl.DateTimeFormat('en', { timeZone: timezone }); // throws on a zone that does not exist
  return db.$transaction(async (tx) => {
    const { id } = await tx.site.create({
      data: { name, timezone, settings: siteSettings.parse(settings) },
      select: { id: true },
    });
    await record(
      tx,
      { siteId: id, userId: null },
      { action: 'site.register', thing: 'site', thingId: id, after: { name } },
    );
    return id;
  });
}
