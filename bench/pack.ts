// npm run bench:pack: what a phone is told of a plant of 5,000 sets and 8,000 motors, whole and after a change: bytes and
// time, on a database of its own.
import { randomUUID } from 'node:crypto';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Actor } from '@/lib/auth/may';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Pack } from '@/lib/offline/pack';
import { deploy } from '../scripts/migrate.mjs';
import { startPostgres } from '../scripts/pg.mjs';
import { demoPlant } from '../seed/plant/plant';

const SIZE = { sets: 5_000, spares: 3_000 };
const SWAPS = 10_000;
const kb = (bytes: number) => (bytes / 1e3).toFixed(1).padStart(8);

const dataDir = mkdtempSync(path.join(os.tmpdir(), 'bedplate-bench-'));
const server = await startPostgres({ dataDir, temporary: true });
try {
  await deploy(server.url);
  process.env.DATABASE_URL = server.url; // read when the client is first imported
  await bench();
} finally {
  await server.stop();
  if (existsSync(dataDir)) rmSync(dataDir, { recursive: true });
}

async function bench(): Promise<void> {
  const { db } = await import('@/lib/db/client');
  const { registerSite } = await import('@/lib/register/commands/register-site');
  const { registerPastSwaps } = await import('@/lib/register/commands/register-past-swaps');
  const { changeThings } = await import('@/lib/register/commands/change-things');
  const { packSince } = await import('@/lib/register/queries/pack');
  const { registerMotors } = await import('@/lib/register/commands/register-motors');
  const { registerPlaces } = await import('@/lib/register/commands/register-places');
  const { registerSets } = await import('@/lib/register/commands/register-sets');

  const siteId = await registerSite({ name: 'Bench', timezone: 'UTC', settings: defaultSettings });
  const userId = randomUUID();
  await db.user.create({
    data: { id: userId, siteId, role: 'planner', name: 'Ida Fenn', email: `${userId}@example.com` },
  });
  const actor: Actor = { siteId, userId, role: 'planner', name: 'Ida Fenn' };
  const plant = demoPlant({ seed: 7, ...SIZE });
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
  const told = Array.from({ length: SWAPS }, (_, i) => ({
    at: new Date(Date.UTC(2026, 0, 1) - i * 3_600_000),
    setId: setIds[(i * 7) % setIds.length] ?? '',
    motorInId: motorIds[(i * 11) % motorIds.length] ?? '',
    motorOutId: motorIds[(i * 11 + 1) % motorIds.length] ?? '',
    ...{ outTo: 'at-repair' as const, why: 'Bearing', hours: 3 },
  }));
  for (let i = 0; i < told.length; i += 1_000) await registerPastSwaps(actor, told.slice(i, i + 1_000));
  console.log(`${sets.size} sets, ${motors.size} motors, ${SWAPS} swaps`);

  const asked = async (what: string, since: string | null): Promise<string> => {
    const pages: { raw: number; packed: number; ms: number }[] = [];
    let [records, cursor] = [0, ''];
    for (let page: string | null = null; ; ) {
      const start = performance.now();
      const pack: Pack | null = await packSince(actor, { since, page });
      if (pack === null) throw new Error('no page');
      const text = Buffer.from(JSON.stringify(pack));
      const ms = performance.now() - start;
      pages.push({ raw: text.length, packed: gzipSync(text).length, ms });
      records += pack.sets.length + pack.motors.length;
      cursor = pack.cursor;
      if (pack.next === null) break;
      page = pack.next;
    }
    const sum = (key: 'raw' | 'packed' | 'ms') => pages.reduce((total, one) => total + one[key], 0);
    const most = Math.max(...pages.map(({ ms }) => ms));
    console.log(
      `${what.padEnd(34)} ${String(records).padStart(6)} records ${String(pages.length).padStart(3)} pages` +
        ` ${kb(sum('raw'))} kB, gzip ${kb(sum('packed'))} kB  ${sum('ms').toFixed(0).padStart(6)} ms, a page at most ${most.toFixed(0)} ms`,
    );
    return cursor;
  };
  const cursor = await asked('whole, the first time', null);
  await asked('whole, again', null);
  await asked('nothing has changed', cursor);
  const [one = ''] = setIds;
  await changeThings(actor, [{ thing: 'set', id: one, version: null, edit: { service: 'Rinse' } }]);
  await asked('one set has changed', cursor);
  const area = await db.area.findFirstOrThrow({ where: { siteId } });
  await changeThings(actor, [{ thing: 'area', id: area.id, version: null, edit: { name: 'Hall of the bench' } }]);
  await asked('an area was renamed', cursor);
  await db.$disconnect();
}

type Registered = { outcome: 'saved'; ids: Map<string, string> } | { outcome: 'refused'; problems: unknown };

async function inParts<T>(list: readonly T[], register: (part: readonly T[]) => Promise<Registered>) {
  const ids = new Map<string, string>();
  for (let i = 0; i < list.length; i += 500) {
    const done = await register(list.slice(i, i + 500));
    if (done.outcome === 'refused') throw new Error(JSON.stringify(done.problems));
    for (const [name, id] of done.ids) ids.set(name, id);
  }
  return ids;
}
