import { record } from '@/lib/audit/record';
import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { isDay } from '../is-day';
import { isId } from '../is-id';
import { keptReview } from '../review/kept-review';
import { type Refused, refused } from './refused';

export interface FindingToAccept {
  setId: string;
  rule: string;
  /** The figures the person looked at: with others it is another finding. */
  figures: string;
  reason: string;
  /** The day on which it stands open again, YYYY-MM-DD. */
  againOn: string;
}

export type AcceptFindingOutcome = { outcome: 'saved'; acceptanceId: string } | { outcome: 'same' } | Refused;

/**
 * Lets a finding of the set review stand until a day, with the reason why; it stands open again before when one of its
 * figures changes. What was accepted before of the same rule and set gives way. `today` is a day of the site.
 */
export async function acceptFinding(
  actor: Actor,
  asked: FindingToAccept,
  today: string,
): Promise<AcceptFindingOutcome> {
  must(actor, 'review.accept');
  const { siteId, userId } = actor;
  const { setId, rule, figures, againOn } = asked;
  const reason = asked.reason.trim();
  if (reason === '' || reason.length > 500) return refused('reason', 'must have 1 to 500 characters');
  if (!(isDay(againOn) && againOn > today))
    return refused('againOn', 'must be a day after today, written as 2026-04-30');
  const reviewed = isId(setId) ? (await keptReview(siteId)).sets.get(setId) : undefined;
  const now = reviewed?.findings.find((one) => one.rule === rule);
  if (now === undefined) return refused('finding', 'is not raised any more, or not at this site');
  if (now.figures !== figures)
    return refused('finding', 'rests on other figures by now: look at it again before you accept it');
  return db.$transaction(async (tx): Promise<AcceptFindingOutcome> => {
    // Of two who accept at once the second finds what the first said.
    await tx.$queryRaw`SELECT 1 FROM pump_set WHERE site_id = ${siteId}::uuid AND id = ${setId}::uuid FOR NO KEY UPDATE`;
    const before = await tx.reviewAcceptance.findFirst({ where: { siteId, setId, rule, withdrawnAt: null } });
    const again = new Date(`${againOn}T00:00:00Z`);
    if (before?.figures === figures && before.reason === reason && before.againOn.getTime() === again.getTime())
      return { outcome: 'same' };
    if (before !== null)
      await tx.reviewAcceptance.update({
        where: { siteId_id: { siteId, id: before.id } },
        data: { withdrawnAt: new Date() },
      });
    const { id } = await tx.reviewAcceptance.create({
      data: { siteId, setId, rule, figures, reason, againOn: again, byId: userId },
      select: { id: true },
    });
    await record(tx, actor, {
      action: 'review.accept',
      thing: 'set',
      thingId: setId,
      before: before && { why: before.reason },
      after: { acceptanceId: id, rule, says: now.says, why: reason, againOn },
    });
    return { outcome: 'saved', acceptanceId: id };
  });
}
