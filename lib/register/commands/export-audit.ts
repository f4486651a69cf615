import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { auditTrail, type Trail, type TrailFilter } from '../queries/audit-trail';

/** As many entries as one file has; the days of the question part what is more. */
const MOST = 100_000;
const PART = 500;

/** The entries of the audit that a filter lets through, part by part, the latest first; that they went out is in the audit first. */
export async function* exportAudit(actor: Actor, filter: TrailFilter): AsyncGenerator<Trail> {
  must(actor, 'audit.read');
  must(actor, 'register.export');
  await db.$transaction((tx) => record(tx, actor, { action: 'audit.export', thing: 'register', thingId: null }));
  let after: string | null = null;
  for (let done = 0; done < MOST; done += PART) {
    const part: Trail = await auditTrail(actor, filter, { after, take: PART });
    yield part;
    if (part.next === null) return;
    after = part.next;
  }
}
