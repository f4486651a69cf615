import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { actionsLike, isKnownAction } from '@/app/audit/action-words';
import { ACTIONS, NotAllowed } from '@/lib/auth/may';
import { toldChanges } from '@/lib/fields/told-changes';
import { changeThings } from '@/lib/register/commands/change-things';
import { exportAudit } from '@/lib/register/commands/export-audit';
import { auditTrail, type TrailFilter, WHOLE_TRAIL } from '@/lib/register/queries/audit-trail';
import { recordThen } from '@/lib/register/queries/record-then';
import { colleague, got, smallPlant, someone } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const trail = (filter: Partial<TrailFilter> = {}, after: string | null = null, take = 100) =>
  auditTrail(here.actor, { ...WHOLE_TRAIL, ...filter }, { after, take });
const change = (edit: Parameters<typeof changeThings>[1][number]['edit']) =>
  changeThings(here.actor, [{ thing: 'motor', id: got(here.motors, 'M-7'), version: null, edit }]);

test('a change is told with who, which, and from what to what in the words of the form', async () => {
  await change({ 'ratings.0.rpm': 1740, massKg: 40, enclosure: null });
  const [entry] = (await trail()).entries;
  expect(entry).toMatchObject({
    by: { userId: here.actor.userId, name: 'Ida Fenn' },
    action: 'motor.change',
    thing: { thing: 'motor', name: 'M-7' },
  });
  const told = (units: 'metric' | 'us') =>
    toldChanges('motor', entry?.before ?? {}, entry?.after ?? {}, units, () => null).map(
      ({ label, from, to }) => `${label}: ${from} to ${to}`,
    );
  expect(told('metric').sort()).toEqual([
    'Enclosure: TEFC to null',
    'Mass: null to 40 kg',
    'Rating 1, speed: 1750 rpm to 1740 rpm',
  ]);
  expect(told('us')).toContain('Mass: null to 88.2 lb');
});

test('it is asked by person, thing, name, change and days, and told part by part without a gap', async () => {
  const other = await colleague(here.actor.siteId, 'reliability', 'Bo Rask');
  await changeThings(other, [{ thing: 'set', id: got(here.sets, 'P-101'), version: null, edit: { service: 'Oil' } }]);
  const done = await change({ condition: 'Painted' });
  expect((await trail({ byId: other.userId })).entries.map(({ thing }) => thing.name)).toEqual(['P-101']);
  expect((await trail({ thing: 'area' })).entries).toEqual([]);
  const changes = await trail({ actions: actionsLike('set.change') });
  expect(changes.entries.map(({ action }) => action).sort()).toEqual(['motor.change', 'set.change']);
  expect((await trail({ actions: actionsLike('set.paint') })).entries).toEqual([]);
  expect((await trail({ name: 'm-7' })).entries.map(({ action }) => action)).toEqual([
    'motor.change',
    'motor.register',
  ]);
  const changeId = done.outcome === 'saved' ? done.changeId : '';
  expect((await trail({ changeId })).entries).toHaveLength(1);
  expect((await trail({ from: new Date(Date.now() + 60_000) })).entries).toEqual([]);
  expect((await trail({ to: new Date(Date.now() - 3_600_000) })).entries).toEqual([]);
  const all = (await trail()).entries.map(({ entryId }) => entryId);
  const parts: string[] = [];
  for (let after: string | null = null; ; ) {
    const part = await trail({}, after, 2);
    parts.push(...part.entries.map(({ entryId }) => entryId));
    if (part.next === null) break;
    after = part.next;
  }
  expect(parts).toEqual(all);
});

test('S26 another site’s audit is not there; a technician reads none; only administrators read of people', async () => {
  const stranger = await someone('administrator');
  const names = (await auditTrail(stranger, WHOLE_TRAIL, { after: null, take: 100 })).entries.map(
    ({ thing }) => thing.name,
  );
  expect(names).not.toContain('M-7');
  const technician = await colleague(here.actor.siteId, 'technician', 'Bo Rask');
  await expect(auditTrail(technician, WHOLE_TRAIL, { after: null, take: 1 })).rejects.toThrow(NotAllowed);
  const { record } = await import('@/lib/audit/record');
  const { db } = await import('@/lib/db/client');
  await record(db, here.actor, { action: 'person.role', thing: 'person', thingId: here.actor.userId });
  expect((await trail({ thing: 'person' })).entries).toEqual([]);
  const office = await colleague(here.actor.siteId, 'administrator', 'Una Holm');
  const seen = await auditTrail(office, { ...WHOLE_TRAIL, thing: 'person' }, { after: null, take: 10 });
  expect(seen.entries.map(({ action }) => action)).toEqual(['person.role']);
});

test('S32 an export of the audit is in it before it goes out', async () => {
  const parts = [];
  for await (const part of exportAudit(here.actor, WHOLE_TRAIL)) parts.push(part);
  expect(parts[0]?.entries[0]).toMatchObject({ action: 'audit.export', by: { userId: here.actor.userId } });
});

test('R6 a record is shown as it stood, beside how it stands', async () => {
  const before = new Date();
  await new Promise((resolve) => setTimeout(resolve, 20));
  await change({ condition: 'Painted' });
  const then = await recordThen(here.actor, 'motor', got(here.motors, 'M-7'), before);
  expect(then?.on).toMatchObject({ outcome: 'stood' });
  expect(then?.on.outcome === 'stood' && then.on.state.condition).toBeUndefined();
  expect(then?.now.condition).toBe('Painted');
  expect(then?.nameOf('shelfId', here.shelfId)).toBe('Main / A1');
  expect(await recordThen(await someone(), 'motor', got(here.motors, 'M-7'), before)).toBeNull();
});

test('every action that the program writes into the audit has words', () => {
  const root = path.resolve(import.meta.dirname, '../..');
  const files = ['lib', 'seed'].flatMap((folder) =>
    readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && !file.includes('generated'))
      .map((file) => path.join(root, folder, file)),
  );
  const mayBeAsked: readonly string[] = ACTIONS;
  const written = new Set<string>();
  for (const file of files)
    for (const [, action = ''] of readFileSync(file, 'utf8').matchAll(/'((?:[a-z]+)\.(?:[a-z]+(?:-[a-z]+)*))'/g))
      if (ABOUT.test(action) && !mayBeAsked.includes(action)) written.add(action);
  for (const thing of ['area', 'store', 'shelf', 'set', 'motor'])
    for (const what of ['register', 'change']) written.add(`${thing}.${what}`);
  expect(written.size).toBeGreaterThan(30);
  expect([...written].filter((action) => !isKnownAction(action))).toEqual([]);
});

const ABOUT =
  /^(area|store|shelf|set|motor|swap|fault|repair|picture|import|register|doubt|site|settings|audit|person|token|link)\./;
