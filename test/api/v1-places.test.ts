import { beforeAll, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { plainSet } from '../register/plant';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  planner = await signedIn('planner');
});

const by = (more: Parameters<typeof ask>[2] = {}) => ({ cookie: planner.cookie, ...more });
const make = (path: string, body: unknown, headers: Record<string, string> = {}) =>
  ask('POST', path, by({ body, headers }));

test('an area is added with what surrounds its sets, and a set is entered into it', async () => {
  const surroundings = { ip: 'IP55', washdown: true, classification: null };
  const area = await make('/areas', { name: ' Fillers ', surroundings });
  expect([area.status, area.body.name, area.body.surroundings]).toEqual([201, 'Fillers', surroundings]);
  expect((await ask('GET', '/areas', by())).body).toEqual({ items: [area.body], next: null });
  const set = await make('/sets', { ...plainSet('P-1').set, areaId: area.body.id });
  expect(set.body.record.areaId).toBe(area.body.id);
});

test('a plant’s places are made from nothing: a store, its shelf, a motor on it', async () => {
  const store = await make('/stores', { name: 'Main' });
  expect(store.status).toBe(201);
  expect((await ask('GET', '/stores', by())).body.items).toEqual([store.body]);
  const shelf = await make('/shelves', { storeId: store.body.id, name: 'A 1' });
  expect(shelf.body).toMatchObject({ store: 'Main', name: 'A 1', storeId: store.body.id });
  const motor = await make('/motors', { id: 'M-1', place: 'on-shelf', shelfId: shelf.body.id });
  expect(motor.body).toMatchObject({ store: 'Main', shelf: 'A 1' });
});

test.each(['/areas', '/stores'])('R2 sent to %s five times at once under one key it is one place', async (path) => {
  const headers = { 'idempotency-key': crypto.randomUUID() };
  const done = await Promise.all([1, 2, 3, 4, 5].map(() => make(path, { name: 'Once' }, headers)));
  expect(done.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201]);
  expect(new Set(done.map(({ body }) => body.id)).size).toBe(1);
  expect((await make(path, { name: 'Twice' }, headers)).status).toBe(422);
  const where = { siteId: planner.actor.siteId, name: 'Once' };
  expect(await (path === '/areas' ? db.area.count({ where }) : db.store.count({ where }))).toBe(1);
});

test.each([
  ['/areas', { name: 'Once' }, 'name'],
  ['/areas', { name: '' }, 'name'],
  ['/areas', { name: 'a\nb' }, 'name'],
  ['/areas', { name: 'x'.repeat(81) }, 'name'],
  ['/areas', { name: 'Wet', surroundings: { ambientC: 1e9 } }, 'surroundings.ambientC'],
  ['/areas', { name: 'Wet', colour: 'blue' }, 'colour'],
  ['/stores', { name: 'Once' }, 'name'],
  ['/stores', {}, 'name'],
  ['/stores', { name: 'East', shelves: [] }, 'shelves'],
  ['/shelves', { storeId: '00000000-0000-4000-8000-000000000000', name: 'B' }, 'storeId'],
  ['/shelves', { storeId: 'Main', name: 'B' }, 'storeId'],
])('S1 S5 %s refuses %j at its key', async (path, body, key) => {
  const refused = await make(path, body);
  expect([refused.status, refused.body.problems[0].path]).toEqual([422, key]);
});

test('S24 S26 a technician adds no place; a stranger sees none, and adds no shelf to a store', async () => {
  const technician = await signedIn('technician');
  const stranger = await signedIn('planner');
  for (const path of ['/areas', '/stores']) {
    const refused = await ask('POST', path, { cookie: technician.cookie, body: { name: 'Mine' } });
    expect(refused.status, path).toBe(403);
    expect((await ask('GET', path, { cookie: stranger.cookie })).body.items, path).toEqual([]);
  }
  const { id: storeId } = await db.store.findFirstOrThrow({ where: { siteId: planner.actor.siteId } });
  const refused = await ask('POST', '/shelves', { cookie: stranger.cookie, body: { storeId, name: 'Theirs' } });
  expect([refused.status, refused.body.problems[0].path]).toEqual([422, 'storeId']);
});
