import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { changeSiteSettings } from '@/lib/register/commands/change-site-settings';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { colleague, settings, someone } from './plant';

const dearer = { ...settings, pricePerKwh: 0.3, hours: { ...settings.hours, shims: 0.75 } };

test('an administrator changes the hours of work, and the record tells from what to what', async () => {
  const actor = await someone('administrator');
  const { version } = await siteSettings(actor);
  expect(await changeSiteSettings(actor, version, dearer)).toEqual({ outcome: 'saved', version: version + 1 });
  expect(await siteSettings(actor)).toMatchObject({ settings: dearer, version: version + 1 });
  const entries = await db.auditEntry.findMany({ where: { siteId: actor.siteId, action: 'settings.edit' } });
  expect(entries).toMatchObject([
    {
      byId: actor.userId,
      before: { 'hours.shims': 1, pricePerKwh: 0.12 },
      after: { 'hours.shims': 0.75, pricePerKwh: 0.3 },
    },
  ]);
});

test('of two who save at once the second is shown what stands', async () => {
  const actor = await someone('administrator');
  const { version } = await siteSettings(actor);
  await changeSiteSettings(actor, version, dearer);
  const second = await changeSiteSettings(actor, version, { ...settings, shimLimitMm: 4 });
  expect(second).toEqual({ outcome: 'stale', settings: dearer, version: version + 1 });
  expect((await siteSettings(actor)).settings).toEqual(dearer);
});

test('nobody else may, and a figure out of range is refused', async () => {
  const actor = await someone('administrator');
  const { version } = await siteSettings(actor);
  for (const role of ['technician', 'planner', 'reliability'] as const) {
    const other = await colleague(actor.siteId, role, 'Bo Lund');
    await expect(changeSiteSettings(other, version, dearer)).rejects.toThrow('Not allowed');
  }
  await expect(changeSiteSettings(actor, version, { ...settings, shimLimitMm: -1 })).rejects.toThrow();
  expect(await siteSettings(actor)).toMatchObject({ settings, version });
});
