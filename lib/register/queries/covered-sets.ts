import { type Actor, must } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { CoveredSet } from '@/lib/spares/cover-lost';
import { SET_ROW, setOfRow } from '../set-row';

/** As many sets as one answer looks at; the most critical first. */
const MOST = 5_000;
/** Rows read whole at a time: between them others have their turn. */
const PART = 250;

/** Large enough for the sets of several big sites; the oldest are dropped first. */
const KEPT = 20_000;
const kept = new Map<string, CoveredSet>();

const version = { select: { id: true, version: true } } as const;

/**
 * The sets in use as their cover is asked; `isAll` is false when the site has more. Only what changed since it was asked
 * last is read whole: of the rest ids and versions are enough.
 */
export async function coveredSets(actor: Actor): Promise<{ sets: CoveredSet[]; isAll: boolean }> {
  must(actor, 'register.read');
  const { siteId } = actor;
  const rows = await db.pumpSet.findMany({
    where: { siteId, retiredAt: null },
    select: { id: true, version: true, area: version, supply: version, motor: version },
    orderBy: [{ criticality: { sort: 'asc', nulls: 'last' } }, { tag: 'asc' }],
    take: MOST + 1,
  });
  const wanted = rows.slice(0, MOST).map((row) => ({ id: row.id, key: `${siteId} ${JSON.stringify(row)}` }));
  const found = new Map<string, CoveredSet>();
  const unread: typeof wanted = [];
  for (const one of wanted) {
    const before = kept.get(one.key);
    if (before === undefined) unread.push(one);
    else found.set(one.id, before);
  }
  for (let i = 0; i < unread.length; i += PART) await readWhole(siteId, unread.slice(i, i + PART), found);
  return { sets: wanted.flatMap(({ id }) => found.get(id) ?? []), isAll: rows.length <= MOST };
}

async function readWhole(siteId: string, part: { id: string; key: string }[], found: Map<string, CoveredSet>) {
  const rows = await db.pumpSet.findMany({
    where: { siteId, id: { in: part.map(({ id }) => id) } },
    include: SET_ROW,
  });
  const keys = new Map(part.map(({ id, key }) => [id, key]));
  for (const row of rows) {
    const made = {
      ...{ setId: row.id, service: row.service, criticality: row.criticality },
      set: setOfRow(row),
    };
    found.set(row.id, made);
    if (kept.size >= KEPT) for (const oldest of kept.keys()) if (kept.delete(oldest)) break;
    kept.set(keys.get(row.id) ?? row.id, made);
  }
}
