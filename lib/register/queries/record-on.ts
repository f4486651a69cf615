import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { type Edit, edited, type State } from '@/lib/fields/state';
import { ALL_THINGS } from '../things/all-things';
import type { ThingName } from '../things/thing';

/** As many changes as are taken back for one record. */
const MOST = 5_000;

export type RecordOn =
  | { outcome: 'stood'; state: State; motorNumber: string | null }
  /** It was entered later: when. */
  | { outcome: 'not-yet'; enteredAt: Date }
  | { outcome: 'unknown' };

/**
 * A record as it stood at a moment: as it stands now, with every later change in the audit taken back. Of a set also the
 * motor that was in it.
 */
export async function recordOn(actor: Actor, thing: ThingName, id: string, moment: Date): Promise<RecordOn> {
  must(actor, 'register.read');
  const { siteId } = actor;
  return db.$transaction(
    async (tx) => {
      const now = (await ALL_THINGS[thing].standing(tx, siteId, [id])).get(id);
      if (now === undefined) return { outcome: 'unknown' };
      const later = await tx.auditEntry.findMany({
        where: {
          siteId,
          thing,
          thingId: id,
          at: { gt: moment },
          action: { in: [`${thing}.register`, ...CHANGES[thing]] },
        },
        orderBy: [{ at: 'desc' }],
        select: { action: true, at: true, before: true },
        take: MOST,
      });
      const entered = later.find(({ action }) => action === `${thing}.register`);
      if (entered) return { outcome: 'not-yet', enteredAt: entered.at };
      const state = later.reduce((whole, { before }) => edited(whole, (before ?? {}) as Edit), now.state);
      return { outcome: 'stood', state, motorNumber: thing === 'set' ? await motorIn(tx, siteId, id, moment) : null };
    },
    { isolationLevel: 'RepeatableRead' },
  );
}

/** The motor whose last move up to then was into the set. */
async function motorIn(tx: Tx, siteId: string, setId: string, then: Date): Promise<string | null> {
  const rows = await tx.$queryRaw<{ number: string }[]>`
    SELECT m.plant_number AS number FROM motor AS m
    WHERE m.site_id = ${siteId}::uuid AND m.id::text IN (
      SELECT thing_id FROM audit_entry WHERE site_id = ${siteId}::uuid AND thing = 'motor' AND after ->> 'setId' = ${setId})
    AND ${setId} = (
      SELECT e.after ->> 'setId' FROM audit_entry AS e
      WHERE e.site_id = m.site_id AND e.thing = 'motor' AND e.thing_id = m.id::text AND e.at <= ${then}
        AND e.after ? 'setId'
      ORDER BY e.at DESC LIMIT 1)`;
  return rows[0] ? rows[0].number : null;
}

/** What in the audit tells fields of the record; a swap's own line tells the motors, which have moves of their own. */
const CHANGES: Record<ThingName, string[]> = {
  area: ['area.change'],
  store: ['store.change'],
  shelf: ['shelf.change'],
  set: ['set.change', 'set.shim'],
  motor: ['motor.change', 'motor.move'],
};
