import { expect, test } from 'vitest';
import { passwordProblem } from '@/lib/auth/password';
import { db } from '@/lib/db/client';
import { createFirstAdministrator } from '@/lib/register/commands/create-first-administrator';
import { registerPerson } from '@/lib/register/commands/register-person';
import { colleague, someone } from '../register/plant';

test.each([
  ['eleven characters', 'heron-quarr', /at least 12/],
  ['129 characters', 'heron quarry '.repeat(10).slice(0, 129), /at most 128/],
  ['a common word with figures', 'Password1234!', /too easy/],
  ['several common words', 'qwerty-welcome-1', /too easy/],
  ['our own name', 'bedplate-2026!', /too easy/],
  ['figures alone', '123456789012', /too easy/],
  ['one letter over and over', 'aaaaaaaaaaaa', /too easy/],
  ['two letters in turn', 'abababababab', /too easy/],
])('S17 a password of %s is refused', (_name, password, says) => {
  expect(passwordProblem(password)).toMatch(says);
});

test.each([
  ['twelve characters', 'heron-quarry'],
  ['128 characters', 'heron quarry lantern '.repeat(7).slice(0, 128)],
  ['spaces and signs', '  mill & weir; 7 gates  '],
  ['letters of any script', 'жёлтая-пшеница'],
  ['a picture', 'kettle🫖on the hob'],
])('S17 a password of %s is taken', (_name, password) => {
  expect(passwordProblem(password)).toBeNull();
});

test('S17 nobody is registered with a password that will not do', async () => {
  const { siteId } = await someone('administrator');
  const person = {
    siteId,
    name: 'Bo Harrow',
    email: `${crypto.randomUUID()}@example.com`,
    role: 'technician',
  } as const;
  await expect(registerPerson(null, { ...person, password: 'password1234' })).rejects.toThrow(/too easy/);
  expect(await db.user.count({ where: { email: person.email } })).toBe(0);
});

test('S18 a password is kept hashed by scrypt of 16 MB or more with a salt of its own', async () => {
  const { siteId } = await someone('administrator');
  const hashes = await Promise.all(
    ['a', 'b'].map(async (letter) => {
      const email = `${letter}-${crypto.randomUUID()}@example.com`;
      const { userId } = await registerPerson(null, {
        siteId,
        name: 'Bo',
        email,
        role: 'technician',
        password: 'heron-quarry',
      });
      return String((await db.account.findFirstOrThrow({ where: { userId } })).password);
    }),
  );
  expect(hashes[0]).not.toBe(hashes[1]);
  const { scryptSync } = await import('node:crypto');
  for (const hash of hashes) {
    // Salt and key in hex: N 16384, r 16, p 1, 64 bytes; 128 · N · r is 32 MB.
    const [salt, key] = hash.split(':') as [string, string];
    const again = scryptSync('heron-quarry'.normalize('NFKC'), salt, 64, {
      N: 16_384,
      r: 16,
      p: 1,
      maxmem: 128 * 16_384 * 16 * 2,
    });
    expect(again.toString('hex')).toBe(key);
  }
});

test('S20 the first administrator is made once, and no password is the default', async () => {
  const { siteId } = await someone('technician');
  await db.user.updateMany({ where: { role: 'administrator' }, data: { role: 'planner' } });
  const none = { email: undefined, password: undefined };
  const made = await createFirstAdministrator(siteId, none);
  expect(made?.password?.length).toBeGreaterThanOrEqual(20);
  expect(await createFirstAdministrator(siteId, none)).toBeNull();
  expect(
    await createFirstAdministrator(siteId, { email: 'other@example.com', password: 'heron-quarry-lantern' }),
  ).toBeNull();
});

test('S24 only an administrator registers people', async () => {
  const { siteId } = await someone('technician');
  const person = {
    siteId,
    name: 'Bo',
    email: `${crypto.randomUUID()}@example.com`,
    role: 'planner',
    password: 'heron-quarry',
  } as const;
  for (const role of ['technician', 'planner', 'reliability'] as const)
    await expect(registerPerson(await colleague(siteId, role, 'Ann'), person)).rejects.toThrow(/Not allowed/);
});
