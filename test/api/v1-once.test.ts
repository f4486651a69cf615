import { afterEach, beforeEach, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { asOwner } from '../db/as-owner';
import { plate } from '../register/plant';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
beforeEach(async () => {
  planner = await signedIn('planner');
});
afterEach(() => asOwner('DROP FUNCTION IF EXISTS never_kept CASCADE'));

const KEY = 'the-motor-of-today';
const motor = (id: string) => ({ ...plate(id), place: 'at-repair' });
const send = (path: string, body: object, key = KEY) =>
  ask('POST', path, { cookie: planner.cookie, body, headers: { 'idempotency-key': key } });
const motors = () => db.motor.count({ where: { siteId: planner.actor.siteId } });

test('R2 what was answered is answered again as it was, though the record was changed since', async () => {
  const first = await send('/motors', motor('M-1'));
  const headers = { 'if-match': String(first.headers.get('etag')) };
  await ask('PATCH', '/motors/M-1', { cookie: planner.cookie, body: { massKg: 41 }, headers });
  const again = await send('/motors', motor('M-1'));
  expect(again.body).toEqual(first.body);
  for (const name of ['etag', 'location']) expect(again.headers.get(name)).toBe(first.headers.get(name));
  expect(await motors()).toBe(1);
});

test('R2 a key serves one body at one address', async () => {
  expect((await send('/motors', motor('M-1'))).status).toBe(201);
  for (const [path, body] of [
    ['/motors', motor('M-2')],
    ['/motors', { ...motor('M-1'), note: 'x' }],
    ['/stores', motor('M-1')],
    ['/stores', { name: 'Main' }],
  ] as const) {
    const refused = await send(path, body);
    expect([refused.status, path]).toEqual([422, path]);
  }
  expect((await send('/motors', motor('M-2'), `${KEY}-2`)).status).toBe(201);
  expect(await motors()).toBe(2);
});

test('R2 five bodies at once under one key: one is carried out, the others are told of it', async () => {
  const done = await Promise.all([1, 2, 3, 4, 5].map((i) => send('/motors', motor(`M-${i}`))));
  expect(done.map(({ status }) => status).sort()).toEqual([201, 422, 422, 422, 422]);
  for (const { status, body } of done) if (status === 422) expect(body.problems[0].path).toBe('Idempotency-Key');
  expect(await motors()).toBe(1);
});

test('R2 a key is forgotten after seven days, and not before', async () => {
  await send('/motors', motor('M-1'));
  const aged = (days: number) =>
    db.seenRequest.updateMany({
      where: { siteId: planner.actor.siteId },
      data: { at: new Date(Date.now() - days * 86_400_000) },
    });
  await aged(6.9);
  expect((await send('/motors', motor('M-2'))).status).toBe(422);
  await aged(7.1);
  expect((await send('/motors', motor('M-2'))).status).toBe(201);
  expect(await db.seenRequest.count({ where: { siteId: planner.actor.siteId } })).toBe(1);
});

test('R1 what cannot be remembered is not done', async () => {
  await asOwner(`CREATE FUNCTION never_kept() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE 'full'; END $$;
    CREATE TRIGGER never_kept BEFORE INSERT ON seen_request FOR EACH ROW EXECUTE FUNCTION never_kept()`);
  const failed = await send('/motors', motor('M-1'));
  expect([failed.status, failed.body.title]).toEqual([
    500,
    expect.stringMatching(/^Something failed here\. Its reference is [0-9a-f]{8}\.$/),
  ]);
  expect(await motors()).toBe(0);
  await asOwner('DROP FUNCTION never_kept CASCADE');
  expect((await send('/motors', motor('M-1'))).status).toBe(201);
});

test.each(['', ' ', 'a b', 'é', 'x'.repeat(201)])('S5 “%s” is no key', async (key) => {
  expect((await send('/motors', motor('M-1'), key)).status).toBe(400);
  expect(await motors()).toBe(0);
});
