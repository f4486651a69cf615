import { beforeAll, describe, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { makeToken } from '@/lib/register/commands/make-token';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { addMotors, addSets, got, plainSet, plate } from '../register/plant';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
let stranger: Awaited<ReturnType<typeof signedIn>>;
let sets: Map<string, string>;
let motors: Map<string, string>;
let shelfId: string;
let storeId: string;

beforeAll(async () => {
  planner = await signedIn('planner');
  stranger = await signedIn('planner');
  const { actor } = planner;
  const { shelves } = await registerPlaces(actor, { areas: [], stores: [{ name: 'Main', shelves: ['A1', 'A2'] }] });
  shelfId = got(shelves, 'Main / A1');
  storeId = (await db.store.findFirstOrThrow({ where: { siteId: actor.siteId } })).id;
  sets = await addSets(actor, plainSet('P-101', { criticality: 1 }), plainSet('P-102'), plainSet('P-103'));
  motors = await addMotors(
    actor,
    { motor: plate('M-1'), at: { place: 'in-set', setId: got(sets, 'P-101') } },
    { motor: plate('M-7'), at: { place: 'on-shelf', shelfId } },
    { motor: plate('M-8'), at: { place: 'on-shelf', shelfId } },
  );
});

const by = (more: Parameters<typeof ask>[2] = {}) => ({ cookie: planner.cookie, ...more });

describe('sets', () => {
  test('one is entered, read, and changed as it was read', async () => {
    const body = { ...plainSet('API-1').set, service: 'Whey', supplyName: 'MCC 2', pump: { description: 'lobe pump' } };
    const made = await ask('POST', '/sets', by({ body }));
    expect(made.status).toBe(201);
    expect(made.headers.get('location')).toBe('/api/v1/sets/API-1');
    const read = await ask('GET', '/sets/API-1', by());
    expect(read.body).toEqual(made.body);
    expect(read.body.record).toMatchObject({
      tag: 'API-1',
      supplyName: 'MCC 2',
      supply: { volts: 460 },
      service: 'Whey',
    });
    const etag = String(read.headers.get('etag'));
    expect((await ask('GET', '/sets/api-1', by({ headers: { 'if-none-match': etag } }))).status).toBe(304);
    const patch = { service: null, criticality: 2, supply: { volts: 480 } };
    const changed = await ask('PATCH', '/sets/API-1', by({ body: patch, headers: { 'if-match': etag } }));
    expect(changed.status).toBe(200);
    expect(changed.body.record).toMatchObject({
      criticality: 2,
      supply: { volts: 480, hertz: 60 },
      supplyName: 'MCC 2',
    });
    expect(changed.body.record.service).toBeUndefined();
    expect(changed.headers.get('etag')).not.toBe(etag);
  });

  test('R3 what was changed since is not overwritten: 412 with how it stands; no If-Match is 428', async () => {
    const { headers } = await ask('GET', '/sets/P-103', by());
    const old = { 'if-match': String(headers.get('etag')) };
    expect((await ask('PATCH', '/sets/P-103', by({ body: { service: 'A' }, headers: old }))).status).toBe(200);
    const late = await ask('PATCH', '/sets/P-103', by({ body: { service: 'B' }, headers: old }));
    expect(late.status).toBe(412);
    expect(late.body.stands.record.service).toBe('A');
    expect((await ask('PATCH', '/sets/P-103', by({ body: { service: 'B' } }))).status).toBe(428);
    const change = async (tag: string) =>
      (await ask('PATCH', '/sets/P-103', by({ body: {}, headers: { 'if-match': tag } }))).status;
    for (const tag of ['*', 'W/"1"', '"1", "2"', '1']) expect(await change(tag)).toBe(428);
    expect(await change('"1"')).toBe(412);
  });

  test('R3 of five changes at once from one reading exactly one stands', async () => {
    const { headers } = await ask('GET', '/sets/P-102', by());
    const old = { 'if-match': String(headers.get('etag')) };
    const done = await Promise.all(
      ['a', 'b', 'c', 'd', 'e'].map((note) => ask('PATCH', '/sets/P-102', by({ body: { note }, headers: old }))),
    );
    expect(done.map(({ status }) => status).sort()).toEqual([200, 412, 412, 412, 412]);
  });

  test('“unclassified” is told by its null, and every other null makes a key not known', async () => {
    await ask('POST', '/sets', by({ body: { ...plainSet('API-2').set, surroundings: { ip: 'IP55' } } }));
    const change = async (body: object) => {
      const { headers } = await ask('GET', '/sets/API-2', by());
      return ask('PATCH', '/sets/API-2', by({ body, headers: { 'if-match': String(headers.get('etag')) } }));
    };
    const told = await change({ surroundings: { classification: null, ip: null } });
    expect(told.body.record.surroundings).toEqual({ classification: null });
    expect((await change({ surroundings: null })).body.record.surroundings).toBeUndefined();
  });

  test('S1 an unknown key, a wrong figure and a tag that is taken are each told', async () => {
    const wrong = await ask(
      'POST',
      '/sets',
      by({ body: { ...plainSet('X').set, colour: 'red', load: { shaftKw: -1 } } }),
    );
    expect(wrong.status).toBe(422);
    expect(wrong.body.problems.map(({ path }: { path: string }) => path).sort()).toEqual(['colour', 'load.shaftKw']);
    const taken = await ask('POST', '/sets', by({ body: plainSet('P-101').set }));
    expect(taken.body.problems).toEqual([{ path: 'tag', value: 'P-101', says: 'is already a set of this site' }]);
    expect((await ask('POST', '/sets', by({ body: '{"tag":' }))).status).toBe(400);
    const headers = { 'content-type': 'text/plain' };
    expect((await ask('POST', '/sets', by({ body: '{}', headers }))).status).toBe(415);
    expect((await ask('POST', '/sets', by({ body: `"${'x'.repeat(2_200_000)}"` }))).status).toBe(413);
  });

  test('a list is walked part by part: each once, though sets are entered on the way', async () => {
    const seen: string[] = [];
    for (let after: string | undefined, i = 0; i < 100; i += 1) {
      const { body } = await ask('GET', '/sets', by({ query: { limit: '2', ...(after && { after }) } }));
      seen.push(...body.items.map(({ record }: { record: { tag: string } }) => record.tag));
      await addSets(planner.actor, plainSet(`AA-${i}`), plainSet(`ZZ-${i}`));
      if (body.next === null || i > 8) break;
      after = body.next;
    }
    expect(new Set(seen).size).toBe(seen.length);
    for (const tag of ['P-101', 'P-102', 'P-103']) expect(seen).toContain(tag);
    const wrong = await ask('GET', '/sets', by({ query: { after: 'nowhere' } }));
    expect([wrong.status, wrong.body.problems[0].path]).toEqual([422, 'after']);
    expect((await ask('GET', '/sets', by({ query: { limit: '5000' } }))).status).toBe(422);
    expect((await ask('GET', '/sets', by({ query: { colour: 'red' } }))).status).toBe(422);
  });
});

describe('motors, shelves, areas', () => {
  test('a motor is entered on a shelf, changed, and found by what is asked', async () => {
    const body = { ...plate('API-M'), maker: 'Fernholt', place: 'on-shelf', shelfId };
    const made = await ask('POST', '/motors', by({ body }));
    expect(made.status).toBe(201);
    expect(made.body).toMatchObject({
      store: 'Main',
      shelf: 'A1',
      record: { id: 'API-M', ratings: [{ hp: 5 }, { kw: 3.7 }] },
    });
    const headers = { 'if-match': String(made.headers.get('etag')), 'content-type': 'application/merge-patch+json' };
    const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1740, amps: 6.6 }];
    const changed = await ask('PATCH', '/motors/API-M', by({ body: { ratings, massKg: 41 }, headers }));
    expect(changed.body.record).toMatchObject({ ratings, massKg: 41 });
    const list = await ask('GET', '/motors', by({ query: { q: 'API-M', place: 'on-shelf' } }));
    expect(list.body.items.map(({ id }: { id: string }) => id)).toEqual([made.body.id]);
    const nowhere = await ask('POST', '/motors', by({ body: { ...plate('X-1'), place: 'on-shelf' } }));
    expect(nowhere.status).toBe(422);
    const elsewhere = await ask(
      'POST',
      '/motors',
      by({ body: { ...plate('X-1'), place: 'in-set', setId: crypto.randomUUID() } }),
    );
    expect(elsewhere.body.problems[0].path).toBe('setId');
    const held = await ask(
      'POST',
      '/motors',
      by({ body: { ...plate('X-1'), place: 'in-set', setId: got(sets, 'P-101') } }),
    );
    expect(held.body.problems[0].says).toContain('holds M-1');
    const area = await ask('POST', '/sets', by({ body: { ...plainSet('X-2').set, areaId: crypto.randomUUID() } }));
    expect(area.body.problems[0].path).toBe('areaId');
  });

  test('a shelf is added; shelves and areas are listed in parts', async () => {
    expect((await ask('POST', '/shelves', by({ body: { storeId, name: 'B1' } }))).status).toBe(201);
    expect((await ask('POST', '/shelves', by({ body: { storeId, name: 'B1' } }))).status).toBe(422);
    const names: string[] = [];
    for (let after: string | undefined; ; ) {
      const { body } = await ask('GET', '/shelves', by({ query: { limit: '1', ...(after && { after }) } }));
      names.push(...body.items.map(({ name }: { name: string }) => name));
      if (body.next === null) break;
      after = body.next;
    }
    expect(names).toEqual(['A1', 'A2', 'B1']);
    expect((await ask('GET', '/areas', by())).body).toEqual({ items: [], next: null });
  });
});

describe('R2 a retried request is carried out once', () => {
  test('sent five times at once under one key, a motor is entered once, and each is answered the same', async () => {
    const body = { ...plate('ONCE-1'), place: 'at-repair' };
    const headers = { 'idempotency-key': crypto.randomUUID() };
    const done = await Promise.all([1, 2, 3, 4, 5].map(() => ask('POST', '/motors', by({ body, headers }))));
    expect(done.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201]);
    for (const { body: told } of done) expect(told).toEqual(done[0]?.body);
    const where = { siteId: planner.actor.siteId, thingId: done[0]?.body.id, action: 'motor.register' };
    expect(await db.auditEntry.count({ where })).toBe(1);
    const other = await ask('POST', '/motors', by({ body: { ...body, massKg: 3 }, headers }));
    expect(other.status).toBe(422);
  });

  test('what was refused can be mended under its key; a key of another person is another key', async () => {
    const headers = { 'idempotency-key': 'mine' };
    const refused = await ask('POST', '/motors', by({ body: { ...plate('M-1'), place: 'at-repair' }, headers }));
    expect(refused.status).toBe(422);
    const mended = await ask('POST', '/motors', by({ body: { ...plate('ONCE-2'), place: 'at-repair' }, headers }));
    expect(mended.status).toBe(201);
    const body = { ...plate('ONCE-3'), place: 'at-repair' };
    expect((await ask('POST', '/motors', { cookie: stranger.cookie, body, headers })).status).toBe(201);
    expect((await ask('POST', '/motors', by({ body, headers: { 'idempotency-key': 'a b' } }))).status).toBe(400);
  });

  test('a swap is recorded once under its key, and who comes later is told who was first', async () => {
    const body = {
      ...{ setId: got(sets, 'P-101'), motorInId: got(motors, 'M-7'), motorOutId: got(motors, 'M-1'), fromSetId: null },
      ...{ outTo: { place: 'at-repair' }, why: 'Bearing', note: 'Told by Bo Rask', workDone: [], checks: [] },
      ...{ insulationMohm: 500, overloadA: null, shimsPresentMm: null, doneAt: null },
    };
    const headers = { 'idempotency-key': crypto.randomUUID() };
    const first = await ask('POST', '/swaps', by({ body, headers }));
    expect(first.status).toBe(201);
    expect((await ask('POST', '/swaps', by({ body, headers }))).body).toMatchObject({ swapId: first.body.swapId });
    expect((await ask('POST', '/swaps', by({ body }))).status).toBe(400);
    const late = { ...body, motorInId: got(motors, 'M-8') };
    const told = await ask('POST', '/swaps', by({ body: late, headers: { 'idempotency-key': crypto.randomUUID() } }));
    expect([told.status, told.body.title]).toEqual([409, 'Ida Fenn was first: the set holds M-7.']);
  });
});

describe('judging', () => {
  test('what can go into a set is told with findings, as the page tells it', async () => {
    const { body, status } = await ask('GET', '/sets/P-102/findings', by({ query: { limit: '3' } }));
    expect(status).toBe(200);
    expect(body.candidates.length).toBeGreaterThan(0);
    expect(body.candidates[0].result.findings.length).toBeGreaterThan(10);
  });

  test('a plate is read, a frame is told, a case is judged', async () => {
    const text = 'HP 5 RPM 1750 V 230/460 HZ 60 FR 184T ENCL TEFC';
    expect((await ask('POST', '/plate', by({ body: { text } }))).body.motor).toMatchObject({ frame: '184T' });
    expect((await ask('GET', '/frames/184TC', by())).body.dimensions.shaftHeightMm.value).toBeCloseTo(114.3, 1);
    expect((await ask('GET', '/frames/FF165', by())).status).toBe(200);
    expect((await ask('GET', '/frames/none', by())).status).toBe(404);
    const assessed = await ask(
      'POST',
      '/assess',
      by({ body: { set: plainSet('P-9').set, candidates: [plate('C-1')] } }),
    );
    expect(assessed.body.results).toHaveLength(1);
  });
});

describe('S13 S24 S26 who asks', () => {
  test.each([
    ['GET', '/sets'],
    ['POST', '/sets'],
    ['PATCH', '/sets/P-101'],
    ['POST', '/motors'],
    ['POST', '/swaps'],
    ['POST', '/imports'],
    ['GET', '/areas'],
  ])('nobody is answered %s %s', async (method, path) => {
    expect((await ask(method, path, method === 'GET' ? {} : { body: {} })).status).toBe(401);
  });

  test('a record of another site is not there, to read or to change', async () => {
    const { cookie } = stranger;
    expect((await ask('GET', '/sets/P-101', { cookie })).status).toBe(404);
    expect((await ask('GET', '/motors/M-7', { cookie })).status).toBe(404);
    expect((await ask('GET', '/sets/P-101/findings', { cookie })).status).toBe(404);
    const headers = { 'if-match': '"1"' };
    expect((await ask('PATCH', '/sets/P-101', { cookie, headers, body: { note: 'x' } })).status).toBe(404);
    expect((await ask('POST', '/shelves', { cookie, body: { storeId, name: 'Z' } })).status).toBe(422);
    const listed = await ask('GET', '/motors', { cookie });
    expect(JSON.stringify(listed.body)).not.toContain('M-7');
  });

  test('a technician reads and does not edit; a token does what it was made for', async () => {
    const technician = await signedIn('technician');
    const { cookie } = technician;
    expect((await ask('GET', '/sets', { cookie })).status).toBe(200);
    expect((await ask('POST', '/sets', { cookie, body: plainSet('T-1').set })).status).toBe(403);
    const administrator = await signedIn('administrator');
    const made = await makeToken(administrator.actor, {
      name: 'Report',
      ownerId: administrator.actor.userId,
      scopes: ['read'],
      days: 3,
    });
    const token = made.outcome === 'saved' ? made.secret : '';
    expect((await ask('GET', '/sets', { token })).status).toBe(200);
    expect((await ask('POST', '/sets', { token, body: plainSet('T-1').set })).status).toBe(403);
  });
});
