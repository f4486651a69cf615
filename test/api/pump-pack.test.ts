import { beforeAll, expect, test } from 'vitest';
import { GET } from '@/app/pump/pack/route';
import { POST as signOut } from '@/app/sign-out/route';
import { db } from '@/lib/db/client';
import { changeOwnPassword } from '@/lib/register/commands/change-own-password';
import { makeToken } from '@/lib/register/commands/make-token';
import { PACK_PAGE } from '@/lib/register/queries/pack';
import { asOwner } from '../db/as-owner';
import { othersDone } from '../register/others-done';
import { addSets, plainSet } from '../register/plant';
import { PASSWORD, signedIn } from './signed-in';

const ask = async (headers: Record<string, string>, query = '') => {
  const answer = await GET(new Request(`http://localhost:3000/pump/pack${query}`, { headers }));
  return { status: answer.status, headers: answer.headers, body: await answer.json() };
};

let person: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  person = await signedIn('technician');
  await addSets({ ...person.actor, role: 'planner' }, plainSet('P-101'));
});

test('S12 whoever is signed in is told their site, and nothing on the way keeps it', async () => {
  await othersDone();
  const { status, headers, body } = await ask({ cookie: person.cookie });
  expect(status).toBe(200);
  expect(headers.get('cache-control')).toBe('private, no-store');
  expect(headers.get('content-type')).toMatch(/^application\/json/);
  expect(body).toMatchObject({
    ...{ version: 1, isWhole: true, next: null, siteId: person.actor.siteId, userId: person.actor.userId },
    person: { name: 'Ida Fenn', role: 'technician', units: 'metric' },
    sets: [{ tag: 'P-101' }],
  });
  const since = await ask({ cookie: person.cookie }, `?since=${body.cursor}`);
  expect(since.body).toMatchObject({ isWhole: false, sets: [], motors: [] });
});

test('the head of a page tells the next one (RFC 8288), and all pages together are the site', async () => {
  const many = await signedIn('technician');
  const { siteId } = many.actor;
  await asOwner(`INSERT INTO pump_set (site_id, tag, mounting, needs)
    SELECT '${siteId}', 'Q-' || n, 'foot', '{}' FROM generate_series(1, ${PACK_PAGE + 7}) AS n`);
  await othersDone();
  const first = await ask({ cookie: many.cookie });
  const next = /^<([^>]+)>; rel="next"$/.exec(first.headers.get('link') ?? '')?.[1] ?? '';
  expect(new URLSearchParams(next.slice(1)).get('page')).toBe(first.body.next);
  const tags = new Set(first.body.sets.map(({ tag }: { tag: string }) => tag));
  expect(tags.size).toBe(PACK_PAGE);
  const second = await ask({ cookie: many.cookie }, next);
  for (const { tag } of second.body.sets) tags.add(tag);
  expect(tags.size).toBe(PACK_PAGE + 7);
  for (let page = second.body.next; page !== null; ) {
    const more = await ask({ cookie: many.cookie }, `?page=${encodeURIComponent(page)}`);
    expect(more.headers.get('link') === null).toBe(more.body.next === null);
    page = more.body.next;
  }
});

test.each([
  ['?sinse=x', 'sinse'],
  ['?since=a&since=b', 'since'],
  ['?page=x', 'page'],
  [`?since=${'x'.repeat(201)}`, 'since'],
  ['?page=%00', 'page'],
])('S1 S5 %s is refused, naming the key', async (query, path) => {
  const { status, body } = await ask({ cookie: person.cookie }, query);
  expect([status, body.problems?.[0]?.path]).toEqual([422, path]);
});

test('S13 no token opens it, whatever its scope', async () => {
  const { siteId, userId } = person.actor;
  const made = await makeToken(
    { siteId, userId, role: 'administrator', name: 'Ida Fenn' },
    { name: 'Historian', scopes: ['read', 'write', 'assess'], days: 30 },
  );
  if (made.outcome !== 'saved') throw new Error(made.outcome);
  for (const [token, status] of [
    [made.secret, 403],
    [`bp_${'x'.repeat(43)}`, 401],
    ['', 401],
  ] as const) {
    const refused = await ask({ cookie: person.cookie, authorization: `Bearer ${token}` });
    expect([refused.status, refused.body.sets]).toEqual([status, undefined]);
    expect(refused.body.wipe).toBeUndefined();
  }
});

test('S12 who is signed out, or never was in, is told to wipe what the phone keeps', async () => {
  const other = await signedIn('technician');
  expect((await ask({ cookie: other.cookie })).status).toBe(200);
  const out = await signOut(
    new Request('http://localhost:3000/sign-out', {
      method: 'POST',
      headers: { cookie: other.cookie, origin: 'http://localhost:3000' },
    }),
  );
  expect([out.status, out.headers.get('location')]).toEqual([303, '/sign-in']);
  expect(out.headers.get('clear-site-data')?.split(', ').sort()).toEqual(['"cache"', '"storage"']);
  expect(out.headers.getSetCookie().some((cookie) => /session_token=;.*Max-Age=0/i.test(cookie))).toBe(true);
  for (const headers of [{ cookie: other.cookie }, {}] as Record<string, string>[])
    expect(await ask(headers)).toMatchObject({ status: 401, body: { status: 401, wipe: true } });
});

test('S12 a session that only went unused keeps the pack, as often as it asks, and is over all the same', async () => {
  const { cookie, actor } = await signedIn('technician');
  const lastSeenAt = new Date(Date.now() - 12.1 * 3_600_000);
  await db.session.updateMany({ where: { userId: actor.userId }, data: { lastSeenAt } });
  for (const _time of [1, 2]) expect(await ask({ cookie })).toMatchObject({ status: 401, body: { wipe: false } });
  await db.user.update({ where: { id: actor.userId }, data: { retiredAt: new Date() } });
  expect(await ask({ cookie })).toMatchObject({ status: 401, body: { wipe: true } });
});

test('S12 S22 a session that was ended elsewhere is told so: by a new password, and by retirement', async () => {
  const [first, second] = [await signedIn('technician'), await signedIn('technician')];
  const changed = { sessionId: 'of another browser', old: PASSWORD, password: 'quarry-heron-tarpaulin' };
  expect(await changeOwnPassword(first.actor, changed)).toEqual({ outcome: 'saved' });
  await db.user.update({ where: { id: second.actor.userId }, data: { retiredAt: new Date() } });
  for (const { cookie } of [first, second])
    expect(await ask({ cookie })).toMatchObject({ status: 401, body: { wipe: true } });
});
