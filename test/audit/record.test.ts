import { expect, test } from 'vitest';
import { record } from '@/lib/audit/record';
import { db } from '@/lib/db/client';
import { asOwner } from '../db/as-owner';
import { someone } from '../register/plant';

const entry = { action: 'set.edit', thing: 'set', thingId: null } as const;

test('an entry holds who, what, and the fields before and after', async () => {
  const actor = await someone();
  await record(db, actor, { ...entry, before: { service: 'Cream' }, after: { service: 'Whey' } });
  expect(await db.auditEntry.findFirstOrThrow({ where: { siteId: actor.siteId, action: 'set.edit' } })).toMatchObject({
    byId: actor.userId,
    before: { service: 'Cream' },
    after: { service: 'Whey' },
  });
});

test.each([
  'UPDATE audit_entry SET note = NULL',
  'DELETE FROM audit_entry',
  'TRUNCATE audit_entry',
  'UPDATE swap SET why = NULL',
  'DELETE FROM swap',
])('S33 %s is refused, to the program and to the owner', async (sql) => {
  await expect(db.$executeRawUnsafe(sql)).rejects.toThrow(/permission denied/);
  await expect(asOwner(sql)).rejects.toThrow(/is history/);
});

test('S32 a line break in a value cannot look like a second entry', async () => {
  const actor = await someone();
  await record(db, actor, { ...entry, note: 'seen\r\n2026-01-01 person.sign-in\u0000\u2028x' });
  const { note } = await db.auditEntry.findFirstOrThrow({ where: { siteId: actor.siteId, action: 'set.edit' } });
  expect(note).toBe('seen 2026-01-01 person.sign-in x');
});

test('the audit is undone with the change that failed', async () => {
  const actor = await someone();
  const failing = db.$transaction(async (tx) => {
    await record(tx, actor, entry);
    throw new Error('after all not');
  });
  await expect(failing).rejects.toThrow('after all not');
  expect(await db.auditEntry.count({ where: { siteId: actor.siteId, action: 'set.edit' } })).toBe(0);
});
