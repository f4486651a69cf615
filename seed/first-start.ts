import { db } from '@/lib/db/client';
import { defaultSettings } from '@/lib/matching/default-settings';
import { registerSite } from '@/lib/register/commands/register-site';
import { announceFirstAdministrator } from './first-administrator';
import { markLoaded } from './loaded';

/** An empty register for real work: one site and its administrator. */
const name = process.env.BEDPLATE_SITE ?? 'Plant';
const siteId = await registerSite({
  name,
  timezone: process.env.BEDPLATE_TIMEZONE ?? 'UTC',
  settings: defaultSettings,
});
await announceFirstAdministrator(siteId);
await markLoaded(siteId);
await db.$disconnect();
