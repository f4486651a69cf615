import { beforeEach, expect, test } from 'vitest';
import { actorOf, signedInOf } from '@/lib/auth/actor';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { anonymisePerson } from '@/lib/register/commands/anonymise-person';
import { bringBackPerson } from '@/lib/register/commands/bring-back-person';
import { changeOwnPassword } from '@/lib/register/commands/change-own-password';
import { changeOwnUnits } from '@/lib/register/commands/change-own-units';
import { changeRole } from '@/lib/register/commands/change-role';
import { endOtherSessions } from '@/lib/register/commands/end-other-sessions';
import { endSession } from '@/lib/register/commands/end-session';
import { invitePerson } from '@/lib/register/commands/invite-person';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { resetPasswordLink } from '@/lib/register/commands/reset-password-link';
import { retirePerson } from '@/lib/register/commands/retire-person';
import { revokeLink } from '@/lib/register/commands/revoke-link';
import { ownSessions } from '@/lib/register/queries/own-sessions';
import { people } from '@/lib/register/queries/people';
import { personById } from '@/lib/register/queries/person-by-id';
import { swapById } from '@/lib/register/queries/swap-by-id';
import { cookiesOf, signedIn, signIn } from '../api/signed-in';
import { colleague, smallPlant, someone } from './plant';

const OLD = 'heron-quarry-lantern';
const NEW = 'weir-and-kettle-hob';
let person: Awaited<ReturnType<typeof signedIn>>;
let boss: Actor;
beforeEach(async () => {
  person = await signedIn('planner');
  boss = await colleague(person.actor.siteId, 'administrator', 'Ann Sluice');
});
const headers = (cookie = person.cookie) => new Headers({ cookie });
const audited = (action: string) =>
  db.auditEntry.findMany({ where: { siteId: boss.siteId, action, thingId: person.actor.userId } });
let last = 0;
const again = async () => {
  last += 1;
  return cookiesOf(await signIn(person.email, OLD, `198.18.210.${last}`));
};

test('S22 S32 a change of role ends the sessions of that person, and the record tells it', async () => {
  const { userId } = person.actor;
  expect(await changeRole(boss, { userId, from: 'planner', to: 'technician' })).toEqual({ outcome: 'saved' });
  expect(await actorOf(headers())).toBeNull();
  expect(await actorOf(headers(await again()))).toMatchObject({ role: 'technician' });
  expect(await audited('person.role')).toMatchObject([
    { byId: boss.userId, before: { role: 'planner' }, after: { role: 'technician', sessionsEnded: 1 } },
  ]);
});

test('R3 a role that somebody else has changed in between is not changed again', async () => {
  const { userId } = person.actor;
  await changeRole(boss, { userId, from: 'planner', to: 'reliability' });
  const second = await changeRole(boss, { userId, from: 'planner', to: 'technician' });
  expect(second).toEqual({ outcome: 'stale', role: 'reliability' });
});

test('S24 the last administrator keeps the role and stays, whoever asks; with a second one it may change', async () => {
  const [first] = await db.user.findMany({
    where: { siteId: boss.siteId, role: 'administrator', id: { not: boss.userId } },
  });
  if (!first) throw new Error('a site begins with an administrator');
  expect(await retirePerson(boss, first.id)).toEqual({ outcome: 'saved' });
  const asked = { userId: boss.userId, from: 'administrator', to: 'planner' } as const;
  for (const done of [await changeRole(boss, asked), await retirePerson(boss, boss.userId)])
    expect(done).toMatchObject({ outcome: 'refused', problems: [{ says: expect.stringContaining('last') }] });
  await colleague(boss.siteId, 'administrator', 'Ida Fenn');
  expect(await changeRole(boss, asked)).toEqual({ outcome: 'saved' });
});

test('S24 two administrators who retire each other at once: one stays', async () => {
  const { siteId } = await someone('technician');
  const [one, two] = [await colleague(siteId, 'administrator', 'A'), await colleague(siteId, 'administrator', 'B')];
  const done = await Promise.all([retirePerson(one, two.userId), retirePerson(two, one.userId)]);
  expect(done.map(({ outcome }) => outcome).sort()).toEqual(['refused', 'saved']);
  expect(await db.user.count({ where: { siteId, role: 'administrator', retiredAt: null } })).toBe(1);
});

test('S22 S32 a retired person is out at once and cannot use a new session; brought back, they sign in again', async () => {
  const { userId } = person.actor;
  expect(await retirePerson(boss, userId)).toEqual({ outcome: 'saved' });
  expect(await db.session.count({ where: { userId } })).toBe(0);
  expect(await actorOf(headers())).toBeNull();
  expect(await actorOf(headers(await again()))).toBeNull();
  expect((await retirePerson(boss, userId)).outcome).toBe('refused');
  expect(await bringBackPerson(boss, userId)).toEqual({ outcome: 'saved' });
  expect((await bringBackPerson(boss, userId)).outcome).toBe('refused');
  expect(await actorOf(headers(await again()))).toEqual(person.actor);
  expect([(await audited('person.retire')).length, (await audited('person.bring-back')).length]).toEqual([1, 1]);
});

test('S30 a person is no longer named, and what they did stands', async () => {
  const plant = await smallPlant();
  const { actor } = plant;
  const administrator = await colleague(actor.siteId, 'administrator', 'Ann Sluice');
  await db.user.update({ where: { id: actor.userId }, data: { email: `ida-${actor.userId}@example.com` } });
  const done = await recordSwap(actor, plant.swap('P-101', 'M-1', 'M-7'), null);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  expect((await anonymisePerson(administrator, actor.userId)).outcome, 'not before they are retired').toBe('refused');
  await retirePerson(administrator, actor.userId);
  expect(await anonymisePerson(administrator, actor.userId)).toEqual({ outcome: 'saved', name: 'A person (1)' });
  expect(JSON.stringify(await swapById(administrator, done.swapId))).toContain('A person (1)');
  const row = await db.user.findUniqueOrThrow({ where: { id: actor.userId }, include: { accounts: true } });
  expect(row).toMatchObject({ name: 'A person (1)', email: expect.stringMatching(/@example\.invalid$/), accounts: [] });
  const tables = [
    await db.user.findMany({ where: { siteId: actor.siteId } }),
    await db.personLink.findMany({ where: { siteId: actor.siteId } }),
    await db.auditEntry.findMany({ where: { siteId: actor.siteId } }),
    await db.swap.findMany({ where: { siteId: actor.siteId } }),
  ];
  // Transaction numbers are no JSON.
  const text = JSON.stringify(tables, (_key, value) => (typeof value === 'bigint' ? String(value) : value));
  for (const gone of ['Ida Fenn', 'ida-']) expect(text).not.toContain(gone);
  expect((await bringBackPerson(administrator, actor.userId)).outcome).toBe('refused');
  const second = await colleague(actor.siteId, 'planner', 'Bo Lund');
  await retirePerson(administrator, second.userId);
  expect(await anonymisePerson(administrator, second.userId)).toMatchObject({ name: 'A person (2)' });
});

test('S22 S17 one’s own password: the old one is asked, the other sessions end, this one goes on', async () => {
  const other = await again();
  const here = await signedInOf(headers());
  if (here === null) throw new Error('signed out');
  const ask = (old: string, password: string) =>
    changeOwnPassword(here.actor, { sessionId: here.sessionId, old, password });
  expect(await ask('not-the-old-one', NEW)).toMatchObject({ outcome: 'refused', problems: [{ path: 'old' }] });
  expect(await ask(OLD, 'Password1234!')).toMatchObject({ outcome: 'refused', problems: [{ path: 'password' }] });
  expect(await actorOf(headers(other))).not.toBeNull();
  expect(await ask(OLD, NEW)).toEqual({ outcome: 'saved' });
  expect(await actorOf(headers(other))).toBeNull();
  expect(await actorOf(headers())).toEqual(person.actor);
  expect((await signIn(person.email, OLD, '198.18.211.1')).status).toBe(401);
  expect((await signIn(person.email, NEW, '198.18.211.2')).status).toBe(200);
  expect(await audited('person.password')).toMatchObject([{ byId: person.actor.userId, after: { sessionsEnded: 1 } }]);
});

test('S19 a session left open is no way to try passwords', async () => {
  const ask = (old: string) => changeOwnPassword(person.actor, { sessionId: 'x', old, password: NEW });
  for (let i = 0; i < 10; i += 1) await ask('not-the-old-one');
  expect(await ask(OLD)).toMatchObject({ problems: [{ path: 'old', says: expect.stringContaining('too often') }] });
});

test('S23 a person sees and ends their own sessions, never their token, and nobody else’s', async () => {
  const other = await again();
  const sessions = await ownSessions(person.actor);
  expect(sessions).toHaveLength(2);
  const tokens = (await db.session.findMany({ where: { userId: person.actor.userId } })).map(({ token }) => token);
  for (const token of tokens) expect(JSON.stringify(sessions)).not.toContain(token);
  const { sessionId } = (await signedInOf(headers(other))) ?? {};
  const planner = await colleague(boss.siteId, 'planner', 'Bo Lund');
  expect((await endSession(planner, String(sessionId))).outcome).toBe('refused');
  expect((await endSession(await someone('administrator'), String(sessionId))).outcome).toBe('refused');
  expect(await endSession(person.actor, String(sessionId))).toEqual({ outcome: 'saved' });
  expect(await actorOf(headers(other))).toBeNull();
  const here = await signedInOf(headers());
  await again();
  const kept = { of: person.actor.userId, keep: String(here?.sessionId) };
  expect(await endOtherSessions(person.actor, kept)).toEqual({ outcome: 'saved', ended: 1 });
  expect(await actorOf(headers())).toEqual(person.actor);
});

test('S22 an administrator ends the sessions of the people of the site; nobody else does', async () => {
  const asked = { of: person.actor.userId, keep: '' };
  await expect(endOtherSessions(await colleague(boss.siteId, 'planner', 'Bo'), asked)).rejects.toThrow('Not allowed');
  expect((await endOtherSessions(await someone('administrator'), asked)).outcome).toBe('refused');
  expect(await actorOf(headers())).toEqual(person.actor);
  const [session] = (await personById(boss, person.actor.userId))?.sessions ?? [];
  expect(await endSession(boss, String(session?.id))).toEqual({ outcome: 'saved' });
  expect(await actorOf(headers())).toBeNull();
  await again();
  expect(await endOtherSessions(boss, asked)).toEqual({ outcome: 'saved', ended: 1 });
  expect(await audited('person.session-end')).toHaveLength(2);
});

test('the people of a site are listed with their role and last sign-in', async () => {
  const listed = await people(boss);
  expect(listed.isAll).toBe(true);
  const one = listed.people.find(({ userId }) => userId === person.actor.userId);
  expect(one).toMatchObject({ role: 'planner', email: person.email, retiredAt: null });
  expect(Date.now() - Number(one?.lastSignIn)).toBeLessThan(60_000);
  expect(listed.people.find(({ userId }) => userId === boss.userId)?.lastSignIn).toBeNull();
});

test('one’s units are kept', async () => {
  const unitsOf = async () => (await db.user.findUniqueOrThrow({ where: { id: person.actor.userId } })).units;
  await changeOwnUnits(person.actor, 'us');
  expect(await unitsOf()).toBe('us');
  expect((await changeOwnUnits(person.actor, 'ells' as never)).outcome).toBe('refused');
  await changeOwnUnits(person.actor, 'metric');
  expect(await unitsOf()).toBe('metric');
});

test('S24 S26 only an administrator of the site changes its people', async () => {
  const { userId } = person.actor;
  const link = await resetPasswordLink(boss, userId);
  if (link.outcome !== 'saved') throw new Error(link.outcome);
  const asks: ((actor: Actor) => Promise<{ outcome: string }>)[] = [
    (actor) => changeRole(actor, { userId, from: 'planner', to: 'technician' }),
    (actor) => retirePerson(actor, userId),
    (actor) => bringBackPerson(actor, userId),
    (actor) => anonymisePerson(actor, userId),
    (actor) => resetPasswordLink(actor, userId),
    (actor) => revokeLink(actor, link.linkId),
  ];
  const stranger = await someone('administrator');
  for (const ask of asks) {
    for (const role of ['technician', 'planner', 'reliability'] as const)
      await expect(ask({ ...boss, role })).rejects.toThrow('Not allowed');
    expect((await ask(stranger)).outcome).toBe('refused');
  }
  const invite = { name: 'Bo', email: 'bo@example.com', role: 'planner' } as const;
  await expect(invitePerson(person.actor, invite)).rejects.toThrow('Not allowed');
  expect(await db.auditEntry.count({ where: { siteId: stranger.siteId, thing: { not: 'site' } } })).toBe(0);
  expect(await actorOf(headers())).toEqual(person.actor);
});
