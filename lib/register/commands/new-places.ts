import type { Tx } from '@/lib/db/client';
import type { Problem } from '@/lib/plant/reading';
import { PLACES } from '@/lib/plant/whereabouts';
import type { MotorPlace } from '../motor-columns';
import { parts } from './parts';

/** What is wrong with where new motors are to be; a problem's path begins with the place in the list. */
export async function motorPlaceProblems(tx: Tx, siteId: string, places: readonly MotorPlace[]): Promise<Problem[]> {
  const told = places.map((place) => place as { place: string; setId?: string; shelfId?: string });
  const shelves = new Set<string>();
  const sets = new Map<string, { tag: string; holds: string | null }>();
  const ids = (key: 'setId' | 'shelfId') => [...new Set(told.flatMap((one) => one[key] ?? []))];
  for (const part of parts(ids('shelfId'))) {
    const where = { siteId, id: { in: [...part] }, retiredAt: null };
    for (const { id } of await tx.shelf.findMany({ where, select: { id: true } })) shelves.add(id);
  }
  for (const part of parts(ids('setId'))) {
    const rows = await tx.pumpSet.findMany({
      where: { siteId, id: { in: [...part] }, retiredAt: null },
      select: { id: true, tag: true, motor: { select: { plantNumber: true } } },
    });
    for (const { id, tag, motor } of rows) sets.set(id, { tag, holds: motor?.plantNumber ?? null });
  }
  return told.flatMap(({ place, setId, shelfId }, i): Problem[] => {
    const wrong = (path: string, value: string | undefined, says: string) => [
      { path: `${i}.${path}`, value: value ?? null, says },
    ];
    if (!PLACES.some((known) => known === place)) return wrong('place', place, `must be one of ${PLACES.join(', ')}`);
    if ((place === 'in-set') !== (setId !== undefined))
      return wrong('setId', setId, 'is told for a motor in a set, and only then');
    if ((place === 'on-shelf') !== (shelfId !== undefined))
      return wrong('shelfId', shelfId, 'is told for a motor on a shelf, and only then');
    if (shelfId !== undefined && !shelves.has(shelfId)) return wrong('shelfId', shelfId, 'is not a shelf of this site');
    if (setId === undefined) return [];
    const set = sets.get(setId);
    if (set === undefined) return wrong('setId', setId, 'is not a set of this site');
    if (set.holds === null) {
      set.holds = 'another of this list';
      return [];
    }
    return wrong('setId', set.tag, `holds ${set.holds}: move that first, or record a swap`);
  });
}

/** Areas of new sets that are none of the site's. */
export async function areaProblems(
  tx: Tx,
  siteId: string,
  areaIds: readonly (string | null | undefined)[],
): Promise<Problem[]> {
  const known = new Set<string>();
  for (const part of parts([...new Set(areaIds.flatMap((id) => id ?? []))])) {
    const where = { siteId, id: { in: [...part] }, retiredAt: null };
    for (const { id } of await tx.area.findMany({ where, select: { id: true } })) known.add(id);
  }
  return areaIds.flatMap((id, i) =>
    id == null || known.has(id) ? [] : [{ path: `${i}.areaId`, value: id, says: 'is not an area of this site' }],
  );
}
