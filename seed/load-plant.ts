import type { Actor, Role } from '@/lib/auth/may';
import { registerMotors } from '@/lib/register/commands/register-motors';
import { registerPastSwaps } from '@/lib/register/commands/register-past-swaps';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { type NewSet, registerSets } from '@/lib/register/commands/register-sets';
import { reportFault } from '@/lib/register/commands/report-fault';
import { mended } from './mended';
import type { DemoMotor, DemoPlant, DemoSet } from './plant/demo';
import { FAULTS, PAST } from './plant/past';
import { monthsBefore } from './plant/spares';
import { measured, reviewWeeks } from './running';

type Ids = ReadonlyMap<string, string>;

/** Puts a demonstration plant into its site through the register's own commands, and some history with it. */
export async function loadPlant(plant: DemoPlant, people: Record<Role, Actor>, today: string): Promise<void> {
  const { planner, technician } = people;
  const { sets, motors } = await loadRecords(plant, planner);
  await registerPastSwaps(
    planner,
    PAST.map(({ monthsAgo, set, motorIn, motorOut, ...told }) => ({
      ...told,
      at: new Date(`${monthsBefore(today, monthsAgo)}T09:40:00Z`),
      setId: got(sets, set),
      motorInId: got(motors, motorIn),
      motorOutId: motorOut && got(motors, motorOut),
    })),
  );
  await mended(technician, today);
  await measured(technician, sets, today);
  await reviewWeeks(planner.siteId, today);
  for (const { set, seen, says } of FAULTS) {
    const done = await reportFault(technician, { setId: got(sets, set), seen: [...seen], says });
    if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  }
}

/** The same without a history. */
export async function loadRecords(plant: DemoPlant, planner: Actor): Promise<{ sets: Ids; motors: Ids }> {
  const { areas, shelves } = await registerPlaces(planner, {
    areas: plant.areas.map(({ name, surroundings }) => ({ name, surroundings })),
    stores: plant.stores.map(({ name, shelves: names }) => ({ name, shelves: [...names] })),
  });
  const sets = saved(
    await registerSets(
      planner,
      plant.sets.map((one) => newSet(one, plant, areas)),
    ),
  );
  const motors = saved(
    await registerMotors(
      planner,
      plant.motors.map(({ number, maker, serial, plate, place }) => ({
        motor: { id: number, ...plate },
        at: placeOf(place, sets, shelves),
        maker,
        serial,
      })),
    ),
  );
  return { sets, motors };
}

function newSet({ area, service, pump, criticality, input }: DemoSet, { areas }: DemoPlant, ids: Ids): NewSet {
  const { name, surroundings } = areas.find(({ code }) => code === area) ?? missing(area);
  const { surroundings: own, ...set } = input;
  return {
    // What the area tells of all its sets is kept with the area.
    set: own === surroundings || own === undefined ? set : { ...set, surroundings: own },
    service,
    criticality,
    areaId: got(ids, name),
    pump: { description: pump },
  };
}

function placeOf(place: DemoMotor['place'], sets: Ids, shelves: Ids) {
  if (typeof place === 'string') return { place };
  if ('set' in place) return { place: 'in-set', setId: got(sets, place.set) } as const;
  return { place: 'on-shelf', shelfId: got(shelves, `${place.store} / ${place.shelf}`) } as const;
}

function saved(done: { outcome: 'saved'; ids: Ids } | { outcome: 'refused'; problems: unknown }): Ids {
  if (done.outcome === 'refused') throw new Error(JSON.stringify(done.problems));
  return done.ids;
}

const got = (ids: Ids, name: string): string => ids.get(name) ?? missing(name);

function missing(name: string): never {
  throw new Error(`The demonstration names ${name}, which it does not have.`);
}
