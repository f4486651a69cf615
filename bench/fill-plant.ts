import { randomUUID } from 'node:crypto';
import type { Actor } from '@/lib/auth/may';
import { defaultSettings } from '@/lib/matching/default-settings';
import { demoPlant } from '../seed/plant/plant';

type Registered = { outcome: 'saved'; ids: Map<string, string> } | { outcome: 'refused'; problems: unknown };

/**
 * A site of the demo's own rules at any size, in the register that DATABASE_URL names: sets, the motors in them, `spares`
 * more on shelves or on order or at repair, and past swaps. Answers its planner and the ids.
 */
export async function fillPlant(size: { sets: number; spares: number; swaps: number }) {
  const { db } = await import('@/lib/db/client');
  const { registerSite } = await import('@/lib/register/commands/register-site');
  const { registerPastSwaps } = await import('@/lib/register/commands/register-past-swaps');
  const { registerMotors } = await import('@/lib/register/commands/register-motors');
  const { registerPlaces } = await import('@/lib/register/commands/register-places');
  const { registerSets } = await import('@/lib/register/commands/register-sets');

  const siteId = await registerSite({ name: `Bench of ${size.sets} sets`, timezone: 'UTC', settings: defaultSettings });
  const userId = randomUUID();
  await db.user.create({
    data: { id: userId, siteId, role: 'planner', name: 'Ida Fenn', email: `${userId}@example.com` },
  });
  const actor: Actor = { siteId, userId, role: 'planner', name: 'Ida Fenn' };
  const plant = demoPlant({ seed: 7, sets: size.sets, spares: size.spares });
  const { areas, shelves } = await registerPlaces(actor, {
    areas: plant.areas.map(({ name, surroundings }) => ({ name, surroundings })),
    stores: plant.stores.map((store) => ({ name: store.name, shelves: [...store.shelves] })),
  });
  const areaOf = (code: string) => areas.get(plant.areas.find((area) => area.code === code)?.name ?? '') ?? null;
  const sets = await inParts(plant.sets, (part) =>
    registerSets(
      actor,
      part.map(({ area, service, pump, criticality, input }) => ({
        ...{ set: input, service, criticality, areaId: areaOf(area), pump: { description: pump } },
      })),
    ),
  );
  const motors = await inParts(plant.motors, (part) =>
    registerMotors(
      actor,
      part.map(({ number, maker, serial, plate, place }) => {
        const at =
          typeof place === 'string'
            ? { place }
            : 'set' in place
              ? { place: 'in-set' as const, setId: sets.get(place.set) ?? '' }
              : { place: 'on-shelf' as const, shelfId: shelves.get(`${place.store} / ${place.shelf}`) ?? '' };
        return { motor: { id: number, ...plate }, at, maker, serial };
      }),
    ),
  );
  const [setIds, motorIds] = [[...sets.values()], [...motors.values()]];
  const told = Array.from({ length: size.swaps }, (_, i) => ({
    at: new Date(Date.UTC(2026, 0, 1) - i * 3_600_000),
    setId: setIds[(i * 7) % setIds.length] ?? '',
    motorInId: motorIds[(i * 11) % motorIds.length] ?? '',
    motorOutId: motorIds[(i * 11 + 1) % motorIds.length] ?? '',
    ...{ outTo: 'at-repair' as const, why: 'Bearing', hours: 3 },
  }));
  for (let i = 0; i < told.length; i += 1_000) await registerPastSwaps(actor, told.slice(i, i + 1_000));
  console.log(`${sets.size} sets, ${motors.size} motors, ${size.swaps} swaps`);
  return { actor, sets, motors };
}

async function inParts<T>(list: readonly T[], register: (part: readonly T[]) => Promise<Registered>) {
  const ids = new Map<string, string>();
  for (let i = 0; i < list.length; i += 500) {
    const done = await register(list.slice(i, i + 500));
    if (done.outcome === 'refused') throw new Error(JSON.stringify(done.problems));
    for (const [name, id] of done.ids) ids.set(name, id);
  }
  return ids;
}
