import { createHash } from 'node:crypto';
import { beforeEach, expect, test, vi } from 'vitest';
import { actorOf } from '@/lib/auth/actor';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { acceptInvitation } from '@/lib/register/commands/accept-invitation';
import { invitePerson } from '@/lib/register/commands/invite-person';
import { resetByLink } from '@/lib/register/commands/reset-by-link';
import { resetPasswordLink } from '@/lib/register/commands/reset-password-link';
import { retirePerson } from '@/lib/register/commands/retire-person';
import { revokeLink } from '@/lib/register/commands/revoke-link';
import { linkBySecret } from '@/lib/register/queries/link-by-secret';
import { personLinks } from '@/lib/register/queries/person-links';
import { signedIn, signIn } from '../api/signed-in';
import { colleague, someone } from '../register/plant';

const PASSWORD = 'weir-and-kettle-hob';
const REFUSED = { outcome: 'refused', problems: [expect.objectContaining({ path: 'link' })] };
let administrator: Actor;
beforeEach(async () => {
  administrator = await someone('administrator');
});

const address = () => `${crypto.randomUUID()}@example.com`;
/** A waiting invitation: its secret, its id, and whom it is for. */
async function invited(email = address()) {
  const done = await invitePerson(administrator, { name: 'Bo Harrow', email, role: 'planner' });
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  return { ...done, email };
}
async function resetFor(actor: Actor) {
  const boss = await colleague(actor.siteId, 'administrator', 'Ann Sluice');
  const done = await resetPasswordLink(boss, actor.userId);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  return { ...done, boss };
}
const anHourOn = () => vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 3_601_000 });

test('S21 S20 by an invitation somebody comes in with a password of their own, and signs in with it', async () => {
  const { secret, email } = await invited();
  expect(await linkBySecret(secret, 'invite')).toMatchObject({ name: 'Bo Harrow', email });
  const done = await acceptInvitation(secret, PASSWORD);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  const person = await db.user.findUniqueOrThrow({ where: { id: done.userId } });
  expect(person).toMatchObject({ email, name: 'Bo Harrow', role: 'planner', siteId: administrator.siteId });
  expect((await signIn(email, PASSWORD, '198.18.200.1')).status).toBe(200);
});

test('S21 an invitation is used once; looking at it does not use it up', async () => {
  const { secret } = await invited();
  await linkBySecret(secret, 'invite');
  await linkBySecret(secret, 'invite');
  expect((await acceptInvitation(secret, PASSWORD)).outcome).toBe('saved');
  expect(await acceptInvitation(secret, PASSWORD)).toEqual(REFUSED);
  expect(await linkBySecret(secret, 'invite')).toBeNull();
});

test('S21 of five who use one invitation at once, one comes in', async () => {
  const { secret, email } = await invited();
  const done = await Promise.all(Array.from({ length: 5 }, () => acceptInvitation(secret, PASSWORD)));
  expect(done.filter(({ outcome }) => outcome === 'saved')).toHaveLength(1);
  expect(done.filter(({ outcome }) => outcome === 'refused')).toHaveLength(4);
  expect(await db.user.count({ where: { email } })).toBe(1);
});

test('S21 a link is dead after an hour', async () => {
  const { secret, expiresAt } = await invited();
  expect((expiresAt.getTime() - Date.now()) / 60_000).toBeCloseTo(60, 0);
  const { actor } = await signedIn();
  const reset = await resetFor(actor);
  anHourOn();
  try {
    expect(await linkBySecret(secret, 'invite')).toBeNull();
    expect(await acceptInvitation(secret, PASSWORD)).toEqual(REFUSED);
    expect(await resetByLink(reset.secret, PASSWORD)).toEqual(REFUSED);
    expect(await personLinks(administrator)).toEqual([]);
  } finally {
    vi.useRealTimers();
  }
  expect((await acceptInvitation(secret, PASSWORD)).outcome, 'it was the hour alone').toBe('saved');
});

test('S21 the database keeps no link longer than an hour, and keeps its sum alone', async () => {
  const { secret, linkId } = await invited();
  expect(secret).toMatch(/^[\w-]{43}$/); // 43 characters of 6 bits: 256 random bits and two that fill up
  const row = await db.personLink.findFirstOrThrow({ where: { siteId: administrator.siteId, id: linkId } });
  expect(row.sha256).toBe(createHash('sha256').update(secret).digest('hex'));
  expect(JSON.stringify(row)).not.toContain(secret);
  await expect(
    db.personLink.updateMany({
      where: { siteId: administrator.siteId },
      data: { expiresAt: new Date(Date.now() + 7_200_000) },
    }),
  ).rejects.toThrow(/person_link_an_hour/);
  const other = await invited();
  expect(other.secret).not.toBe(secret);
});

test('S21 a revoked link is dead, an older one of the same person too, and so is that of an administrator who left', async () => {
  const first = await invited();
  const second = await invited(first.email);
  expect(await acceptInvitation(first.secret, PASSWORD)).toEqual(REFUSED);
  expect(await revokeLink(administrator, second.linkId)).toEqual({ outcome: 'saved' });
  expect(await acceptInvitation(second.secret, PASSWORD)).toEqual(REFUSED);
  expect((await revokeLink(administrator, second.linkId)).outcome).toBe('refused');
  expect((await revokeLink(administrator, "x'; --")).outcome).toBe('refused');
  const third = await invited();
  const boss = await colleague(administrator.siteId, 'administrator', 'Ann Sluice');
  expect((await retirePerson(boss, administrator.userId)).outcome).toBe('saved');
  expect(await acceptInvitation(third.secret, PASSWORD)).toEqual(REFUSED);
});

test('S21 a link of one purpose does not serve the other, and what is no link is refused in the same words', async () => {
  const { secret } = await invited();
  const { actor } = await signedIn();
  const reset = await resetFor(actor);
  const none = await acceptInvitation('x'.repeat(43), PASSWORD);
  expect(none).toEqual(REFUSED);
  for (const [asked, link] of [
    [acceptInvitation, reset.secret],
    [resetByLink, secret],
    [resetByLink, ''],
    [acceptInvitation, `${secret}\u0000`],
    [acceptInvitation, 'x'.repeat(1_000_000)],
  ] as const)
    expect(await asked(link, PASSWORD)).toEqual(none);
});

test('S17 a password that will not do is refused at a link and leaves it usable', async () => {
  const { secret } = await invited();
  for (const password of ['heron-quarr', 'Password1234!', 'x'.repeat(129)])
    expect(await acceptInvitation(secret, password)).toMatchObject({ problems: [{ path: 'password' }] });
  expect((await acceptInvitation(secret, PASSWORD)).outcome).toBe('saved');
  const { actor } = await signedIn();
  const reset = await resetFor(actor);
  expect(await resetByLink(reset.secret, 'password')).toMatchObject({ problems: [{ path: 'password' }] });
});

test('S21 S22 a reset link gives a new password once, ends every session, and opens a locked account', async () => {
  const { actor, cookie, email } = await signedIn();
  for (let i = 0; i < 11; i += 1) await signIn(email, 'wrong-wrong-wrong', `198.18.201.${i}`);
  const { secret } = await resetFor(actor);
  expect(await actorOf(new Headers({ cookie })), 'making a link ends nothing').toEqual(actor);
  const both = await Promise.all([resetByLink(secret, PASSWORD), resetByLink(secret, 'another-one-quite-long')]);
  expect(both.map(({ outcome }) => outcome).sort()).toEqual(['refused', 'saved']);
  expect(await actorOf(new Headers({ cookie }))).toBeNull();
  expect(await db.session.count({ where: { userId: actor.userId } })).toBe(0);
  const right = both[0].outcome === 'saved' ? PASSWORD : 'another-one-quite-long';
  expect((await signIn(email, 'heron-quarry-lantern', '198.18.202.1')).status).toBe(401);
  expect((await signIn(email, right, '198.18.202.2')).status).toBe(200);
});

test('S21 a retired person gets no reset link, and one that waits is dead', async () => {
  const { actor } = await signedIn();
  const { secret, boss } = await resetFor(actor);
  await retirePerson(boss, actor.userId);
  expect(await resetByLink(secret, PASSWORD)).toEqual(REFUSED);
  expect(await linkBySecret(secret, 'reset')).toBeNull();
  expect((await resetPasswordLink(boss, actor.userId)).outcome).toBe('refused');
});

test('S1 S5 an invitation is refused with every problem at its field', async () => {
  const asked = { name: ' \n ', email: `${'x'.repeat(300)}@example.com`, role: 'king', siteId: 'other' };
  const done = await invitePerson(administrator, asked as never);
  if (done.outcome !== 'refused') throw new Error(done.outcome);
  expect(done.problems.map(({ path }) => path).sort()).toEqual(['email', 'name', 'role', 'siteId']);
  for (const email of ['bo', 'bo@', 'bo@example.invalid', 'bo harrow@example.com', 'x'.repeat(1_000_000)])
    expect(await invitePerson(administrator, { name: 'Bo', email, role: 'planner' }), email.slice(0, 20)).toMatchObject(
      {
        problems: [{ path: 'email' }],
      },
    );
});

test('S26 nobody is invited twice; of people elsewhere an invitation tells nothing until it is taken up', async () => {
  const { secret, email } = await invited();
  await acceptInvitation(secret, PASSWORD);
  const again = { name: 'Bo', email: ` ${email.toUpperCase()} `, role: 'planner' } as const;
  expect(await invitePerson(administrator, again)).toMatchObject({ problems: [{ path: 'email' }] });
  const elsewhere = await invitePerson(await someone('administrator'), again);
  if (elsewhere.outcome !== 'saved') throw new Error(elsewhere.outcome);
  expect(await acceptInvitation(elsewhere.secret, PASSWORD)).toMatchObject({ problems: [{ path: 'email' }] });
  expect(await db.user.count({ where: { email } })).toBe(1);
});

test('S32 S30 links leave audit rows, without secret, name or address', async () => {
  const { secret, email, linkId } = await invited();
  await acceptInvitation(secret, PASSWORD);
  await revokeLink(administrator, (await invited()).linkId);
  const rows = await db.auditEntry.findMany({
    where: { siteId: administrator.siteId, thing: { not: 'site' } },
    orderBy: { at: 'asc' },
  });
  expect(rows.map(({ action }) => action)).toEqual([
    'person.invite',
    'person.join',
    'person.invite',
    'person.link-revoke',
  ]);
  expect(rows[0]).toMatchObject({ byId: administrator.userId, thingId: linkId, after: { role: 'planner' } });
  for (const told of [secret, email, 'Harrow', PASSWORD]) expect(JSON.stringify(rows)).not.toContain(told);
});
