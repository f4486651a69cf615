import { createHash } from 'node:crypto';
import { NextRequest } from 'next/server';
import { beforeEach, expect, test, vi } from 'vitest';
import { askedBy } from '@/app/api/v1/asked-by';
import { POST as assess } from '@/app/api/v1/assess/route';
import { GET as frame } from '@/app/api/v1/frames/[frame]/route';
import { answer } from '@/app/api/v1/problem';
import { NO_SITE } from '@/lib/audit/record';
import { ACTIONS, type Action, type Actor } from '@/lib/auth/may';
import { SCOPES, type Scope, scopesFor } from '@/lib/auth/scopes';
import { db } from '@/lib/db/client';
import { changeRole } from '@/lib/register/commands/change-role';
import { makeToken } from '@/lib/register/commands/make-token';
import { retirePerson } from '@/lib/register/commands/retire-person';
import { revokeToken } from '@/lib/register/commands/revoke-token';
import { tokens } from '@/lib/register/queries/tokens';
import { proxy } from '@/proxy';
import { example } from '../contract/example';
import { colleague, someone } from '../register/plant';
import { signedIn } from './signed-in';

let boss: Actor;
let owner: Actor;
beforeEach(async () => {
  boss = await someone('administrator');
  owner = await colleague(boss.siteId, 'planner', 'Bo Harrow');
});

async function made(scopes: Scope[], ownerId = owner.userId, days = 30) {
  const done = await makeToken(boss, { name: 'Historian', scopes, days, ownerId });
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  return done;
}
const bearer = (secret: string) => ({ authorization: `Bearer ${secret}` });
const frames = (headers: Record<string, string>) =>
  frame(new Request('http://localhost:3000/api/v1/frames/184TC', { headers }), {
    params: Promise.resolve({ frame: '184TC' }),
  });
const judged = (headers: Record<string, string>) =>
  assess(
    new Request('http://localhost:3000/api/v1/assess', {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...headers },
      body: JSON.stringify(example()),
    }),
  );
/** What any route would answer that asks for this action. */
const asked = (action: Action, method: string, headers: Record<string, string>) =>
  askedBy(new Request('http://localhost:3000/api/v1/any', { method, headers }), action, async (actor) => answer(actor));
const denials = async (siteId = boss.siteId) =>
  (await db.auditEntry.findMany({ where: { siteId, action: 'token.denied' } })).map(({ note }) => note);

async function problemOf(response: Response) {
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  expect(response.headers.get('cache-control')).toContain('no-store');
  const { status, title } = await response.json();
  expect(status).toBe(response.status);
  expect(title).toMatch(/\S/);
  return { status, challenge: response.headers.get('www-authenticate') };
}

test('S13 a token is shown once, has 256 random bits, and is kept as its sum alone', async () => {
  const { secret, tokenId } = await made(['read']);
  expect(secret).toMatch(/^bp_[\w-]{43}$/);
  const row = await db.apiToken.findFirstOrThrow({ where: { siteId: boss.siteId, id: tokenId } });
  expect(row.sha256).toBe(createHash('sha256').update(secret).digest('hex'));
  const told = JSON.stringify([row, await tokens(boss), await db.auditEntry.findMany()]);
  expect(told).not.toContain(secret.slice(3));
  expect((await made(['read'])).secret).not.toBe(secret);
});

test('S13 a token asks as its owner does, with the owner’s role and site', async () => {
  const { secret } = await made(['read', 'write']);
  const done = await asked('set.edit', 'POST', bearer(secret));
  expect([done.status, await done.json()]).toEqual([200, owner]);
  expect((await frames(bearer(secret))).status).toBe(200);
  expect((await frames({ authorization: `bearer   ${secret}` })).status, 'RFC 9110, 11.1: any case').toBe(200);
});

test('S13 no token, or one that is not known, is answered 401 with a challenge', async () => {
  expect(await problemOf(await frames({}))).toEqual({ status: 401, challenge: 'Bearer' });
  for (const wrong of [`bp_${'x'.repeat(43)}`, 'bp_', '', 'x', `bp_${'x'.repeat(100_000)}`, "bp_' OR 1=1 --"])
    expect(await problemOf(await frames(bearer(wrong))), wrong.slice(0, 20)).toEqual({
      status: 401,
      challenge: 'Bearer error="invalid_token"',
    });
  const { secret } = await made(['read']);
  expect((await frames(bearer(secret.slice(3)))).status).toBe(401);
  expect((await frames({ authorization: `Basic ${secret}` })).status).toBe(401);
});

test.each([
  ['read', 'frame.read', 'GET', 200],
  ['read', 'set.assess', 'POST', 403],
  ['assess', 'set.assess', 'POST', 200],
  ['write', 'set.assess', 'POST', 200],
  ['assess', 'frame.read', 'GET', 403],
  ['write', 'frame.read', 'GET', 403],
  ['assess', 'swap.record', 'POST', 403],
  ['read', 'swap.record', 'POST', 403],
  ['write', 'swap.record', 'POST', 200],
  ['read', 'register.read', 'POST', 403],
  ['write', 'register.read', 'POST', 200],
] as const)(
  'S13 a token with the scope %s that asks for %s by %s is answered %i',
  async (scope, action, method, status) => {
    const { secret } = await made([scope]);
    const response = await asked(action, method, bearer(secret));
    expect(response.status).toBe(status);
    if (status !== 403) return;
    const [needed] = scopesFor(action, method);
    const { challenge } = await problemOf(response);
    expect(challenge).toBe(`Bearer error="insufficient_scope", scope="${needed}"`);
    expect(await denials()).toEqual(['scope']);
  },
);

test('S13 the routes themselves keep the scopes', async () => {
  const [reads, judges] = [await made(['read']), await made(['assess'])];
  expect((await frames(bearer(reads.secret))).status).toBe(200);
  expect((await judged(bearer(reads.secret))).status).toBe(403);
  expect((await judged(bearer(judges.secret))).status).toBe(200);
  expect((await frames(bearer(judges.secret))).status).toBe(403);
});

test('S13 S24 no token manages people, tokens or passwords, and none does more than its owner’s role', async () => {
  const all = await made([...SCOPES], boss.userId);
  for (const action of ['people.manage', 'token.manage', 'self.manage'] as const)
    for (const method of ['GET', 'POST']) expect((await asked(action, method, bearer(all.secret))).status).toBe(403);
  const technician = await colleague(boss.siteId, 'technician', 'Ida Fenn');
  const { secret } = await made([...SCOPES], technician.userId);
  expect((await asked('set.edit', 'POST', bearer(secret))).status).toBe(403);
  expect((await asked('swap.record', 'POST', bearer(secret))).status).toBe(200);
  expect(await denials()).toContain('role');
  for (const action of ACTIONS) expect(Array.isArray(scopesFor(action, 'GET')), action).toBe(true);
});

test('S13 a token dies on its day', async () => {
  const { secret, expiresAt } = await made(['read'], owner.userId, 1);
  expect((await frames(bearer(secret))).status).toBe(200);
  vi.useFakeTimers({ toFake: ['Date'], now: expiresAt.getTime() });
  try {
    expect((await problemOf(await frames(bearer(secret)))).status).toBe(401);
  } finally {
    vi.useRealTimers();
  }
  expect(await denials()).toEqual(['expired']);
});

test('S13 S32 a token dies when it is revoked, and the record tells who made it, who ended it and what came after', async () => {
  const { secret, tokenId } = await made(['read']);
  expect((await frames(bearer(secret))).status).toBe(200);
  expect(await revokeToken(boss, tokenId)).toEqual({ outcome: 'saved' });
  expect((await problemOf(await frames(bearer(secret)))).status).toBe(401);
  expect((await revokeToken(boss, tokenId)).outcome).toBe('refused');
  const rows = await db.auditEntry.findMany({
    where: { siteId: boss.siteId, thingId: tokenId },
    orderBy: { at: 'asc' },
  });
  expect(rows.map(({ action, byId }) => [action, byId])).toEqual([
    ['token.make', boss.userId],
    ['token.use', owner.userId],
    ['token.revoke', boss.userId],
    ['token.denied', owner.userId],
  ]);
  expect(rows[0]?.after).toMatchObject({ ownerId: owner.userId, scopes: ['read'] });
});

test('S13 S22 a token dies when its owner is retired or loses the role', async () => {
  const first = await made(['read']);
  await changeRole(boss, { userId: owner.userId, from: 'planner', to: 'technician' });
  expect((await frames(bearer(first.secret))).status).toBe(401);
  const second = await made(['read']);
  await retirePerson(boss, owner.userId);
  expect((await frames(bearer(second.secret))).status).toBe(401);
  const third = await made(['read'], (await colleague(boss.siteId, 'planner', 'Ida Fenn')).userId);
  // Retired by other means than the command: the door looks at the owner too.
  await db.user.updateMany({ where: { siteId: boss.siteId, name: 'Ida Fenn' }, data: { retiredAt: new Date() } });
  expect((await frames(bearer(third.secret))).status).toBe(401);
  expect((await denials()).sort()).toEqual(['retired', 'revoked', 'revoked']);
});

test('S13 S32 the last use is noted once a minute, and the first of each day leaves a row', async () => {
  const { secret, tokenId } = await made(['read']);
  const last = async () =>
    (await db.apiToken.findFirstOrThrow({ where: { siteId: boss.siteId, id: tokenId } })).lastUsedAt?.getTime() ?? null;
  const uses = () => db.auditEntry.count({ where: { siteId: boss.siteId, thingId: tokenId, action: 'token.use' } });
  const noon = new Date(Date.now() + 86_400_000).setUTCHours(12, 0, 0, 0);
  expect(await last()).toBeNull();
  const seen: [number | null, number][] = [];
  try {
    for (const at of [
      noon,
      noon + 59_000,
      noon + 61_000,
      noon + 12 * 3_600_000 - 5_000,
      noon + 12 * 3_600_000 + 5_000,
    ]) {
      vi.useFakeTimers({ toFake: ['Date'], now: at });
      expect((await frames(bearer(secret))).status).toBe(200);
      vi.useRealTimers();
      seen.push([((await last()) ?? noon) - noon, await uses()]);
    }
  } finally {
    vi.useRealTimers();
  }
  expect(seen).toEqual([
    [0, 1],
    [0, 1],
    [61_000, 1],
    [43_195_000, 1],
    [43_205_000, 2],
  ]);
});

test('S32 the same refusal again within a minute leaves no second row; that of an unknown token is of no site', async () => {
  const { secret } = await made(['read']);
  for (let i = 0; i < 5; i += 1) await judged(bearer(secret));
  expect(await denials()).toEqual(['scope']);
  const unknown = `bp_${'y'.repeat(43)}`;
  await frames(bearer(unknown));
  expect(await denials(NO_SITE)).toContain('unknown');
  expect(JSON.stringify(await db.auditEntry.findMany())).not.toContain(unknown);
});

test('S13 a request with a token is judged by it alone, not by the cookie beside it', async () => {
  const { cookie, actor } = await signedIn('planner');
  expect((await frames({ cookie })).status).toBe(200);
  expect((await frames({ cookie, ...bearer(`bp_${'x'.repeat(43)}`) })).status).toBe(401);
  const { secret } = await made(['read', 'write']);
  const done = await asked('set.edit', 'POST', { cookie, ...bearer(secret) });
  expect(await done.json()).toEqual(owner);
  expect(owner.userId).not.toBe(actor.userId);
});

test('S10 a token opens no door to other sites: with or without one, a foreign change is refused', async () => {
  const { secret } = await made(['write']);
  const sent = (headers: Record<string, string>) =>
    proxy(
      new NextRequest('http://plant.example:3000/api/v1/assess', {
        method: 'POST',
        headers: { host: 'plant.example:3000', ...bearer(secret), ...headers },
      }),
    ).status;
  expect(sent({}), 'a program sends neither header').toBe(200);
  expect(sent({ 'sec-fetch-site': 'cross-site', cookie: 'bedplate.session_token=x' })).toBe(403);
  expect(sent({ origin: 'http://elsewhere.example', cookie: 'bedplate.session_token=x' })).toBe(403);
});

test('S24 S26 only an administrator makes and revokes tokens, for people of the own site', async () => {
  const asks = { name: 'Historian', scopes: ['read' as const], days: 30 };
  const { tokenId } = await made(['read']);
  for (const role of ['technician', 'planner', 'reliability'] as const) {
    await expect(makeToken({ ...boss, role }, asks)).rejects.toThrow('Not allowed');
    await expect(revokeToken({ ...boss, role }, tokenId)).rejects.toThrow('Not allowed');
    await expect(tokens({ ...boss, role })).rejects.toThrow('Not allowed');
  }
  const stranger = await someone('administrator');
  expect(await makeToken(stranger, { ...asks, ownerId: owner.userId })).toMatchObject({
    problems: [{ path: 'ownerId' }],
  });
  expect((await revokeToken(stranger, tokenId)).outcome).toBe('refused');
  expect((await tokens(stranger)).tokens).toEqual([]);
  expect((await tokens(boss)).tokens).toMatchObject([{ tokenId, owner: 'Bo Harrow', revokedAt: null }]);
  await retirePerson(boss, owner.userId);
  expect((await makeToken(boss, { ...asks, ownerId: owner.userId })).outcome).toBe('refused');
});

test.each([
  ['no name', { name: ' ' }, 'name'],
  ['a name of a megabyte', { name: 'x'.repeat(1_000_000) }, 'name'],
  ['no scope', { scopes: [] }, 'scopes'],
  ['a scope not known', { scopes: ['read', 'everything'] }, 'scopes.1'],
  ['no day', { days: 0 }, 'days'],
  ['a year and a day', { days: 366 }, 'days'],
  ['half a day', { days: 1.5 }, 'days'],
  ['days that are no number', { days: Number.NaN }, 'days'],
  ['S1 an unknown key', { colour: 'blue' }, 'colour'],
])('S5 a token with %s is refused at its field', async (_name, wrong, path) => {
  const done = await makeToken(boss, { name: 'Historian', scopes: ['read'], days: 30, ...wrong } as never);
  expect(done).toMatchObject({ outcome: 'refused', problems: [expect.objectContaining({ path })] });
});
