import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { thingDoubts } from '../doubts/thing-doubts';
import { isDay } from '../is-day';
import { isId } from '../is-id';
import { type Refused, refused } from './refused';

export interface DoubtToAccept {
  thing: 'set' | 'motor';
  thingId: string;
  rule: string;
  /** The figures the person looked at: with others it is another doubt. */
  figures: string;
  reason: string;
  /** The day on which it is raised again, YYYY-MM-DD; null: not before its figures change. */
  againOn: string | null;
}

export type AcceptOutcome = { outcome: 'saved'; acceptanceId: string } | { outcome: 'same' } | Refused;

/**
 * Lets a doubt stand, with the reason why. It is raised again when one of its figures changes, or on the day told. What was
 * accepted before of the same rule and record gives way. `today` is a day of the site.
 */
export async function acceptDoubt(actor: Actor, doubt: DoubtToAccept, today: string): Promise<AcceptOutcome> {
  must(actor, 'doubt.accept');
  const { siteId, userId } = actor;
  const { thing, thingId, rule, figures, againOn } = doubt;
  const reason = doubt.reason.trim();
  if (reason === '' || reason.length > 500) return refused('reason', 'must have 1 to 500 characters');
  if (againOn !== null && !(isDay(againOn) && againOn > today))
    return refused('againOn', 'must be a day after today, written as 2026-04-30');
  if (!isId(thingId)) return refused('doubt', 'is not raised at this site');
  return db.$transaction(async (tx): Promise<AcceptOutcome> => {
    await locked(tx, siteId, thing, thingId);
    const now = (await thingDoubts(tx, siteId, thing, thingId)).find((one) => one.doubt.rule === rule);
    if (now === undefined) return refused('doubt', 'is not raised any more, or not at this site');
    if (now.doubt.figures !== figures)
      return refused('doubt', 'rests on other figures by now: look at it again before you accept it');
    const before = await tx.acceptance.findFirst({ where: { siteId, rule, thingId, withdrawnAt: null } });
    const again = againOn === null ? null : new Date(`${againOn}T00:00:00Z`);
    if (before?.figures === figures && before.againOn?.getTime() === again?.getTime() && before.reason === reason)
      return { outcome: 'same' };
    if (before !== null)
      await tx.acceptance.update({
        where: { siteId_id: { siteId, id: before.id } },
        data: { withdrawnAt: new Date() },
      });
    const { id } = await tx.acceptance.create({
      data: { siteId, rule, thing, thingId, figures, reason, byId: userId, againOn: again },
      select: { id: true },
    });
    await record(tx, actor, {
      action: 'doubt.accept',
      thing,
      thingId,
      before: before && { why: before.reason },
      after: {
        acceptanceId: id,
        rule,
        says: now.doubt.says,
        why: reason,
        ...(againOn === null ? {} : { againOn }),
      },
    });
    return { outcome: 'saved', acceptanceId: id };
  });
}

/** Holds the record until the transaction ends, so that its figures stay and two acceptances come one after the other. */
async function locked(tx: Tx, siteId: string, thing: 'set' | 'motor', id: string): Promise<void> {
  if (thing === 'set')
    await tx.$queryRaw`SELECT 1 FROM pump_set WHERE site_id = ${siteId}::uuid AND id = ${id}::uuid FOR NO KEY UPDATE`;
  else await tx.$queryRaw`SELECT 1 FROM motor WHERE site_id = ${siteId}::uuid AND id = ${id}::uuid FOR NO KEY UPDATE`;
}
