import { beforeAll, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { labelText } from '@/lib/plant/label-code';
import { ALL_MOTORS } from '@/lib/register/motor-filter';
import { byLabel } from '@/lib/register/queries/by-label';
import { labelLines } from '@/lib/register/queries/label-lines';
import { listMotors } from '@/lib/register/queries/list-motors';
import { listSets } from '@/lib/register/queries/list-sets';
import { storePlaces } from '@/lib/register/queries/store-places';
import { ALL_SETS } from '@/lib/register/set-filter';
import { got, smallPlant } from './plant';

let plant: Awaited<ReturnType<typeof smallPlant>>;
const code = { set: '', motor: '' };
beforeAll(async () => {
  plant = await smallPlant();
  const { siteId } = plant.actor;
  code.set = String((await db.pumpSet.findFirstOrThrow({ where: { siteId, tag: 'P-101' } })).code);
  code.motor = String((await db.motor.findFirstOrThrow({ where: { siteId, plantNumber: 'M-7' } })).code);
});
const whole = { skip: 0, take: 100 };
const names = ({ lines }: Awaited<ReturnType<typeof labelLines>>) => lines.map(({ name }) => name);

test('a label leads to its set after the tag has changed', async () => {
  const where = { siteId: plant.actor.siteId, code: code.set };
  await db.pumpSet.updateMany({ where, data: { tag: 'P-201' } });
  expect(await byLabel(plant.actor, labelText(code.set).toLowerCase())).toEqual({ thing: 'set', tag: 'P-201' });
  await db.pumpSet.updateMany({ where, data: { tag: 'P-101' } });
  expect(await byLabel(plant.actor, `https://elsewhere.example/l/${code.motor}`)).toEqual({
    thing: 'motor',
    number: 'M-7',
  });
  expect(await byLabel(plant.actor, '1023-456J')).toBeNull();
  expect(await byLabel(plant.actor, 'P-101')).toBeNull();
});

test('a list finds what carries a label by its code', async () => {
  const page = { page: 1, perPage: 50 };
  const sets = await listSets(plant.actor, { ...ALL_SETS, q: labelText(code.set) }, page);
  expect(sets.sets.map(({ tag }) => tag)).toEqual(['P-101']);
  const motors = await listMotors(plant.actor, { ...ALL_MOTORS, q: code.motor.toLowerCase() }, page);
  expect(motors.motors.map(({ motor }) => motor.id)).toEqual(['M-7']);
});

test('labels are asked for by name, by code, by list, by store, and part by part', async () => {
  const { actor } = plant;
  const named = { by: 'name', tags: ['P-102'], numbers: ['M-8', 'M-none'], codes: [code.set, code.motor] } as const;
  expect(names(await labelLines(actor, named, whole))).toEqual(['P-101', 'P-102', 'M-7', 'M-8']);
  const parts = [];
  for (const skip of [0, 1, 2, 3, 4]) parts.push(names(await labelLines(actor, named, { skip, take: 1 })));
  expect(parts).toEqual([['P-101'], ['P-102'], ['M-7'], ['M-8'], []]);
  const ids = [got(plant.sets, 'P-102'), 'no id'];
  expect(names(await labelLines(actor, { by: 'sets', filter: ALL_SETS, ids }, whole))).toEqual(['P-102']);
  const [store] = await storePlaces(actor);
  const storeId = String(store?.storeId);
  const inStore = await labelLines(actor, { by: 'motors', filter: ALL_MOTORS, storeId, ids: null }, whole);
  expect(names(inStore)).toEqual(['M-7', 'M-8']);
  expect(
    await labelLines(actor, { by: 'motors', filter: ALL_MOTORS, storeId: null, ids: null }, { skip: 1, take: 2 }),
  ).toMatchObject({
    all: 4,
    lines: [{ name: 'M-2' }, { name: 'M-7' }],
  });
});
