import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { ACCEPTANCE_ROW, type AcceptedDoubt, acceptanceOf, type OpenDoubt, parted } from '../doubts/acceptances';
import { thingDoubts } from '../doubts/thing-doubts';
import { isId } from '../is-id';

export type DoubtedThing = { thing: 'set' | 'motor'; id: string };

/** What cannot be right on a few records, such as a set and the motor in it. `today` is a day of the site. */
export async function doubtsOf(
  actor: Actor,
  things: readonly DoubtedThing[],
  today: string,
): Promise<{ open: OpenDoubt[]; accepted: AcceptedDoubt[] }> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const asked = things.filter(({ id }) => isId(id)).slice(0, MOST_THINGS);
  const [found, rows] = await Promise.all([
    Promise.all(asked.map(({ thing, id }) => thingDoubts(db, siteId, thing, id))),
    db.acceptance.findMany({
      where: { siteId, withdrawnAt: null, thingId: { in: asked.map(({ id }) => id) } },
      include: ACCEPTANCE_ROW,
      take: MOST_ACCEPTANCES,
    }),
  ]);
  return parted(found.flat(), rows.map(acceptanceOf), today);
}

const MOST_THINGS = 20;
/** One of each rule for each of them, and more than there are rules. */
const MOST_ACCEPTANCES = 2_000;
