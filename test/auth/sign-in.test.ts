import { expect, test } from 'vitest';
import { POST as submit } from '@/app/sign-in/submit/route';
import { POST as signOut } from '@/app/sign-out/route';
import { actorOf } from '@/lib/auth/actor';
import { auth } from '@/lib/auth/auth';
import { db } from '@/lib/db/client';
import { cookiesOf, signedIn, signIn } from '../api/signed-in';

const RIGHT = 'heron-quarry-lantern';
const WRONG = 'lantern-quarry-heron';
let last = 0;
/** An address nobody came from yet (RFC 2544). */
const fresh = () => {
  last += 1;
  return `198.18.${last >> 8}.${last & 255}`;
};

/** So many wrong tries, one after another; the statuses they are answered with. */
async function fail(times: number, email: () => string, address: () => string): Promise<number[]> {
  const statuses: number[] = [];
  for (let i = 0; i < times; i += 1) statuses.push((await signIn(email(), WRONG, address())).status);
  return statuses;
}
const stranger = () => `${crypto.randomUUID()}@example.com`;

test('S19 after ten failures for an account, from whatever addresses, even its right password is answered 429', async () => {
  const { email } = await signedIn();
  expect(await fail(10, () => email, fresh)).toEqual(Array(10).fill(401));
  const answer = await signIn(email, RIGHT, fresh());
  expect(answer.status).toBe(429);
  expect(answer.headers.getSetCookie()).toEqual([]);
  expect((await signIn(email.toUpperCase(), RIGHT, fresh())).status).toBe(429);
});

test('S19 after ten failures from an address, for whatever accounts, it is answered 429; another address is not', async () => {
  const { email } = await signedIn();
  const address = fresh();
  expect(await fail(10, stranger, () => address)).toEqual(Array(10).fill(401));
  expect((await signIn(email, RIGHT, address)).status).toBe(429);
  expect((await signIn(email, RIGHT, fresh())).status).toBe(200);
});

test('S19 the addresses of one IPv6 network are one address', async () => {
  const network = (n: number) => `2001:db8:0:7::${n.toString(16)}`;
  let n = 0;
  const next = () => {
    n += 1;
    return n === 5 ? '2001:0DB8:0:7:0:0:0:5' : network(n);
  };
  expect(await fail(11, stranger, next)).toEqual([...Array(10).fill(401), 429]);
  expect(await fail(1, stranger, () => '2001:db8:0:8::1')).toEqual([401]);
});

test('S19 an address is not cleared by one success among its failures', async () => {
  const { email } = await signedIn();
  const address = fresh();
  await fail(6, stranger, () => address);
  expect((await signIn(email, RIGHT, address)).status).toBe(200);
  expect(await fail(5, stranger, () => address)).toEqual([401, 401, 401, 401, 429]);
});

test('S19 an unknown account is answered in the same words as a known one, wrong and locked out alike', async () => {
  const { email } = await signedIn();
  const unknown = stranger();
  const told = async (who: string) => {
    const answers: [number, string][] = [];
    for (let i = 0; i < 12; i += 1) {
      const answer = await signIn(who, WRONG, fresh());
      answers.push([answer.status, await answer.text()]);
    }
    return answers;
  };
  const known = await told(email);
  expect(await told(unknown)).toEqual(known);
  expect(known[11]?.[0]).toBe(429);
});

test('S19 an unknown account takes as long as a known one', async () => {
  const { email } = await signedIn();
  const unknown = stranger();
  const time = async (who: string) => {
    const start = performance.now();
    await signIn(who, WRONG, fresh());
    return performance.now() - start;
  };
  // In turns: what else the machine does meets both.
  const ratios: number[] = [];
  for (let i = 0; i < 9; i += 1) {
    const known = await time(email);
    ratios.push((await time(unknown)) / known);
  }
  const median = ratios.sort((a, b) => a - b)[4];
  expect(median).toBeGreaterThan(0.4);
  expect(median).toBeLessThan(2.5);
});

test('S19 ten tries at once are ten tries', async () => {
  const { email } = await signedIn();
  const address = fresh();
  const statuses = await Promise.all(
    Array.from({ length: 16 }, () => signIn(email, WRONG, address).then((a) => a.status)),
  );
  expect(statuses.filter((status) => status === 401).length).toBeLessThanOrEqual(10);
  expect(statuses.filter((status) => status === 429).length).toBeGreaterThanOrEqual(6);
});

test('S19 the tries are forgotten after fifteen minutes, and an address longer than any is not kept', async () => {
  const { email } = await signedIn();
  await fail(11, () => email, fresh);
  await db.$executeRaw`UPDATE sign_in_limit SET since = now() - interval '16 minutes' WHERE who = ${`account ${email}`}`;
  expect((await signIn(email, RIGHT, fresh())).status).toBe(200);
  expect((await signIn(`${'x'.repeat(5_000)}@example.com`, WRONG, fresh())).status).not.toBe(200);
  expect(await db.signInLimit.count({ where: { who: { contains: 'xxxxx' } } })).toBe(0);
});

test('S20 nobody can sign up', async () => {
  const body = JSON.stringify({
    email: stranger(),
    password: RIGHT,
    name: 'Nobody',
    siteId: crypto.randomUUID(),
    role: 'administrator',
  });
  const headers = { 'content-type': 'application/json', origin: 'http://localhost:3000' };
  const answer = await auth.handler(
    new Request('http://localhost:3000/api/auth/sign-up/email', { method: 'POST', headers, body }),
  );
  expect(answer.ok).toBe(false);
});

test('S22 a session token is new at each sign-in, has 128 random bits or more, and ends on the server at sign-out', async () => {
  const { email, cookie, actor } = await signedIn();
  const second = cookiesOf(await signIn(email, RIGHT, fresh()));
  const tokens = (await db.session.findMany({ where: { userId: actor.userId } })).map(({ token }) => token);
  expect(new Set(tokens).size).toBe(2);
  for (const token of tokens) expect(token.length * Math.log2(62)).toBeGreaterThan(128); // letters and digits
  const headers = new Headers({ cookie });
  expect(await actorOf(headers)).toEqual(actor);
  const answer = await signOut(new Request('http://localhost:3000/sign-out', { method: 'POST', headers }));
  expect(answer.headers.get('location')).toBe('/sign-in');
  expect(answer.headers.get('clear-site-data')).toContain('"storage"');
  expect(await actorOf(headers)).toBeNull();
  expect(await actorOf(new Headers({ cookie: second }))).toEqual(actor);
});

test('S22 a session unused for twelve hours, or seven days old, is over; so is that of a retired person', async () => {
  const hours = (n: number) => new Date(Date.now() - n * 3_600_000);
  for (const age of ['idle', 'old', 'retired'] as const) {
    const { cookie, actor } = await signedIn();
    const where = { userId: actor.userId };
    const { expiresAt, createdAt } = await db.session.findFirstOrThrow({ where });
    expect((expiresAt.getTime() - createdAt.getTime()) / 86_400_000).toBeCloseTo(7, 2);
    if (age === 'idle') await db.session.updateMany({ where, data: { lastSeenAt: hours(12.1) } });
    if (age === 'old') await db.session.updateMany({ where, data: { expiresAt: hours(0.1) } });
    if (age === 'retired') await db.user.update({ where: { id: actor.userId }, data: { retiredAt: new Date() } });
    expect(await actorOf(new Headers({ cookie })), age).toBeNull();
  }
});

test('S9 the cookie is not for scripts and not for other sites', async () => {
  const { email } = await signedIn();
  const [cookie] = (await signIn(email, RIGHT, fresh())).headers.getSetCookie();
  expect(cookie).toMatch(/; HttpOnly/i);
  expect(cookie).toMatch(/; SameSite=Lax/i);
  expect(cookie).toMatch(/; Path=\//i);
});

test('S11 S6 the form goes back to a path of this site only, and takes a short form only', async () => {
  const { email } = await signedIn();
  const send = (to: string, type = 'application/x-www-form-urlencoded', password = RIGHT) => {
    const body = new URLSearchParams({ email, password, to }).toString();
    const headers = {
      'content-type': type,
      'content-length': String(body.length),
      origin: 'http://localhost:3000',
      'x-client-address': fresh(),
    };
    return submit(new Request('http://localhost:3000/sign-in/submit', { method: 'POST', headers, body }));
  };
  const going = async (to: string) => (await send(to)).headers.get('location');
  expect(await going('/sets/P-101?a=1')).toBe('/sets/P-101?a=1');
  for (const to of [
    '//elsewhere.example',
    'https://elsewhere.example/',
    '/\\elsewhere.example',
    'javascript:alert(1)',
    '/sign-out',
  ])
    expect(await going(to), to).toBe('/');
  expect((await send('/', 'text/plain')).status).toBe(415);
  expect((await send('/'.repeat(9_000))).status).toBe(413);
  const wrong = await send('/sets/P-101', undefined, WRONG);
  expect([wrong.status, wrong.headers.get('location')]).toEqual([303, '/sign-in?problem=401&to=%2Fsets%2FP-101']);
  expect(wrong.headers.getSetCookie()).toEqual([]);
});

test('S32 S30 sign-in leaves a row whichever way it went, without what was typed', async () => {
  const { actor, email } = await signedIn();
  await fail(11, () => email, fresh);
  const unknown = stranger();
  await fail(1, () => unknown, fresh);
  const rows = await db.auditEntry.findMany({
    where: { siteId: actor.siteId, thing: 'person', thingId: actor.userId },
  });
  const count = (action: string) => rows.filter((row) => row.action === action).length;
  expect([count('person.sign-in'), count('person.sign-in-refused'), count('person.locked-out')]).toEqual([1, 10, 1]);
  const all = JSON.stringify(await db.auditEntry.findMany());
  for (const secret of [WRONG, RIGHT, unknown]) expect(all).not.toContain(secret);
});
