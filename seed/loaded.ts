import { record } from '@/lib/audit/record';
import { db } from '@/lib/db/client';

/** The last act of filling an empty register: a start that does not find it begins anew. */
export async function markLoaded(siteId: string): Promise<void> {
  await record(db, { siteId, userId: null }, { action: 'site.loaded', thing: 'site', thingId: siteId });
}
