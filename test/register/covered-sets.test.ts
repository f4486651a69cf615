import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { coveredSets } from '@/lib/register/queries/covered-sets';
import { got, smallPlant } from './plant';

const told = async (actor: Parameters<typeof coveredSets>[0]) => (await coveredSets(actor)).sets;

test('the most critical sets come first, and what is asked again is what stands then', async () => {
  const { actor, sets, motors, swap } = await smallPlant();
  const siteId = actor.siteId;
  const before = await told(actor);
  expect(before.map(({ set }) => [set.tag, set.failed?.id])).toEqual([
    ['P-101', 'M-1'],
    ['P-102', 'M-2'],
  ]);
  expect(await told(actor)).toEqual(before);

  await recordSwap(actor, swap('P-101', 'M-1', 'M-7'), null);
  expect((await told(actor))[0]?.set.failed?.id).toBe('M-7');

  await db.motor.update({
    where: { siteId_id: { siteId, id: got(motors, 'M-7') } },
    data: { measured: { holeMm: 11 } },
  });
  expect((await told(actor))[0]?.set.failed?.measured.holeMm).toBe(11);

  await db.supply.updateMany({ where: { siteId }, data: { volts: 575 } });
  expect((await told(actor)).map(({ set }) => set.supply.volts)).toEqual([575, 575]);

  const area = await db.area.create({ data: { siteId, name: 'Yard', surroundings: { ambientC: 45 } } });
  const id = got(sets, 'P-101');
  await db.pumpSet.update({ where: { siteId_id: { siteId, id } }, data: { areaId: area.id, criticality: 4 } });
  expect((await told(actor)).map(({ set }) => set.tag)).toEqual(['P-102', 'P-101']);
  await db.area.update({ where: { siteId_id: { siteId, id: area.id } }, data: { surroundings: { ambientC: 50 } } });
  expect((await told(actor))[1]?.set.surroundings.ambientC).toBe(50);
});
