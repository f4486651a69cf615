import { type Actor, must } from '@/lib/auth/may';
import { db, type Tx } from '@/lib/db/client';
import { PACK_VERSION, type Pack } from '@/lib/offline/pack';
import { siteSettings } from '@/lib/plant/site-settings';
import { changedMotors, changedSets } from '../pack/changed-ids';
import { type Cursor, cursorNow, cursorOf, cursorText, isBehind } from '../pack/cursor';
import { packMotors } from '../pack/pack-motors';
import { packSets } from '../pack/pack-sets';
import { type PlaceInPack, placeOf, placeText } from '../pack/place-in-pack';
import { shelvesIn } from './shelves';

export interface PackAsked {
  /** The cursor the phone keeps; null: it has nothing. One that is not understood gets the whole plant. */
  since: string | null;
  /** `next` of the page before; null: the first. */
  page: string | null;
}

/** So many sets and motors are told on a page. */
export const PACK_PAGE = 2_000;

/**
 * The actor's site as a phone keeps it, whole or what may have changed since a cursor, page by page; null: the page is of
 * another register, and the phone begins again. Never a row too few; a row that has not changed may be told again.
 */
export async function packSince(
  actor: Actor,
  { since, page }: PackAsked,
  perPage: number = PACK_PAGE,
): Promise<Pack | null> {
  must(actor, 'register.read');
  const { siteId, userId } = actor;
  return db.$transaction(
    async (tx) => {
      const now = await cursorNow(tx, siteId);
      const place = page === null ? firstPlace(since, now) : placeOf(page);
      if (place === null || place.register !== now.register || (place.begun ?? now.from) > now.from) return null;
      const begun = place.begun ?? now.from;
      const { setIds, motorIds, next } = await onPage(tx, siteId, { ...place, begun }, now.before, perPage);
      const site = await tx.site.findUniqueOrThrow({ where: { id: siteId } });
      const person = await tx.user.findUniqueOrThrow({ where: { id: userId } });
      return {
        ...{ version: PACK_VERSION, siteId, userId },
        site: { name: site.name, timezone: site.timezone, settings: siteSettings.parse(site.settings) },
        person: { name: person.name, role: person.role, units: person.units === 'us' ? 'us' : 'metric' },
        at: now.at.toISOString(),
        // Who has lost their name since the first page may be named on it: the next question must find that out.
        cursor: cursorText({ ...place, from: begun }),
        isWhole: place.isWhole,
        sets: await packSets(tx, siteId, setIds),
        motors: await packMotors(tx, siteId, motorIds),
        shelves: await shelvesIn(tx, siteId),
        next: next && placeText(next),
      };
    },
    { isolationLevel: 'RepeatableRead' },
  );
}

function firstPlace(since: string | null, now: Cursor): PlaceInPack {
  const old = since === null ? null : cursorOf(since);
  const from = old !== null && isBehind(old, now) ? old.from : null;
  return { ...now, isWhole: from === null, from, begun: null, of: 'set', after: null };
}

/** The ids of a page, and where the next one begins; null: the phone has it all. */
async function onPage(
  tx: Tx,
  siteId: string,
  place: PlaceInPack & { begun: bigint },
  before: bigint,
  perPage: number,
): Promise<{ setIds: string[]; motorIds: string[]; next: PlaceInPack | null }> {
  const { from, of, after } = place;
  const asked = { siteId, from, before };
  const setIds = of === 'set' ? await changedSets(tx, { ...asked, after, take: perPage + 1 }) : [];
  if (setIds.length > perPage) {
    const page = setIds.slice(0, perPage);
    return { setIds: page, motorIds: [], next: { ...place, after: page.at(-1) ?? null } };
  }
  const room = perPage - setIds.length;
  const behind = of === 'motor' ? after : null;
  const motorIds = await changedMotors(tx, { ...asked, after: behind, take: room + 1 });
  if (motorIds.length > room) {
    const page = motorIds.slice(0, room);
    return { setIds, motorIds: page, next: { ...place, of: 'motor', after: page.at(-1) ?? behind } };
  }
  const isWholeRound = of === 'set' && after === null;
  const another: PlaceInPack = { ...place, from: place.begun, begun: null, of: 'set', after: null };
  return { setIds, motorIds, next: isWholeRound ? null : another };
}
