import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { PumpSet } from '@/lib/plant/set';
import { isId } from '../is-id';
import { literal } from '../literal';
import { SET_ROW, setOfRow } from '../set-row';

/** As many sets as one motor is asked for at once. */
export const MOST_IN_GROUP = 60;

export interface GroupOfSets {
  /** As the judgement takes them, by tag. */
  sets: PumpSet[];
  /** Tags that no set in use of the site has, in any case of letters. */
  unknown: string[];
}

/** The sets in use with these tags, in any case of letters, or these ids. More than `MOST_IN_GROUP` are not looked at. */
export async function groupOfSets(
  actor: Actor,
  { tags, ids }: { tags: readonly string[]; ids: readonly string[] },
): Promise<GroupOfSets> {
  must(actor, 'register.read');
  const wanted = [...new Set(tags.map((tag) => tag.trim()))].filter((tag) => tag !== '').slice(0, MOST_IN_GROUP);
  const known = ids.filter((id) => isId(id)).slice(0, MOST_IN_GROUP);
  if (wanted.length + known.length === 0) return { sets: [], unknown: [] };
  const rows = await db.pumpSet.findMany({
    where: {
      siteId: actor.siteId,
      retiredAt: null,
      OR: [
        { id: { in: known } },
        ...wanted.map((tag) => ({ tag: { equals: literal(tag), mode: 'insensitive' as const } })),
      ],
    },
    include: SET_ROW,
    orderBy: { tag: 'asc' },
    take: MOST_IN_GROUP,
  });
  const there = new Set(rows.map(({ tag }) => tag.toLowerCase()));
  return { sets: rows.map(setOfRow), unknown: wanted.filter((tag) => !there.has(tag.toLowerCase())) };
}
