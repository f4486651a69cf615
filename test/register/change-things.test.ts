import { beforeEach, expect, test } from 'vitest';
import type { Role } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import type { Edit } from '@/lib/fields/state';
import { changeThings } from '@/lib/register/commands/change-things';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { registerMotors } from '@/lib/register/commands/register-motors';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { undoChange } from '@/lib/register/commands/undo-change';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { recordOn } from '@/lib/register/queries/record-on';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import type { ThingName } from '@/lib/register/things/thing';
import { colleague, got, plate, smallPlant, someone } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const versionOf = async (thing: 'set' | 'motor', key: string) => {
  const known = thing === 'set' ? await setByTag(here.actor, key) : await motorByNumber(here.actor, key);
  return known?.row.version ?? Number.NaN;
};
const change = (thing: ThingName, id: string, edit: Edit, version: number | null = null) =>
  changeThings(here.actor, [{ thing, id, version, edit }]);
const motor = (number: string) => got(here.motors, number);
const set = (tag: string) => got(here.sets, tag);
const entries = () => db.auditEntry.findMany({ where: { siteId: here.actor.siteId, action: { endsWith: '.change' } } });

test('a motor’s plate is changed field by field, and the audit tells from what to what', async () => {
  const done = await change('motor', motor('M-7'), { 'ratings.0.rpm': 1740, serviceFactor: null, maker: 'Brandal' });
  expect(done.outcome).toBe('saved');
  const known = await motorByNumber(here.actor, 'M-7');
  expect(known?.motor.ratings[0]).toMatchObject({ rpm: 1740, hp: 5 });
  expect(known?.motor.serviceFactor).toBeNull();
  expect(known?.row.maker).toBe('Brandal');
  expect(await entries()).toMatchObject([
    {
      action: 'motor.change',
      thingId: motor('M-7'),
      byId: here.actor.userId,
      before: { 'ratings.0.rpm': 1750, serviceFactor: 1.15, maker: null },
      after: { 'ratings.0.rpm': 1740, serviceFactor: null, maker: 'Brandal' },
    },
  ]);
});

test('R3 a change of an old version is refused and tells what stands', async () => {
  const version = await versionOf('set', 'P-101');
  expect((await change('set', set('P-101'), { service: 'Syrup' }, version)).outcome).toBe('saved');
  const late = await change('set', set('P-101'), { service: 'Brine' }, version);
  expect(late).toMatchObject({ outcome: 'stale', state: { tag: 'P-101', service: 'Syrup' } });
  expect(await versionOf('set', 'P-101')).toBe(late.outcome === 'stale' ? late.version : null);
  expect((await setByTag(here.actor, 'P-101'))?.row.service).toBe('Syrup');
});

test('R3 a change of pump or supply counts as a change of the set', async () => {
  const version = await versionOf('set', 'P-101');
  await change('set', set('P-101'), { 'supply.volts': 480, 'pump.description': 'lobe pump' });
  expect(await versionOf('set', 'P-101')).toBeGreaterThan(version);
  expect((await setByTag(here.actor, 'P-101'))?.set.supply.volts).toBe(480);
});

test('R1 of several changes all are made or none', async () => {
  const done = await changeThings(here.actor, [
    { thing: 'set', id: set('P-101'), version: null, edit: { service: 'Syrup' } },
    { thing: 'motor', id: motor('M-7'), version: null, edit: { 'ratings.0.hp': -1 } },
  ]);
  expect(done).toMatchObject({ outcome: 'refused', problems: [{ thing: 'motor', path: 'ratings.0.hp' }] });
  expect((await setByTag(here.actor, 'P-101'))?.row.service).toBeNull();
  expect(await entries()).toEqual([]);
});

test('what stands so already is no change', async () => {
  expect(await change('motor', motor('M-7'), { 'ratings.0.rpm': 1750, maker: null })).toEqual({ outcome: 'same' });
  expect(await entries()).toEqual([]);
});

const REFUSED: [string, ThingName, () => string, Edit, string][] = [
  ['a figure out of range', 'motor', () => motor('M-7'), { 'ratings.0.volts': 99_999 }, 'ratings.0.volts'],
  ['hp and kW in one row', 'motor', () => motor('M-7'), { 'ratings.0.kw': 3.7 }, 'ratings.0.kw'],
  ['a field that is none', 'motor', () => motor('M-7'), { colour: 'grey' }, 'colour'],
  ['a plant number that is there', 'motor', () => motor('M-7'), { id: 'M-8' }, 'id'],
  [
    'a set that holds another',
    'motor',
    () => motor('M-7'),
    { place: 'in-set', shelfId: null, setId: 'P-101' },
    'setId',
  ],
  ['a shelf of nowhere', 'motor', () => motor('M-7'), { shelfId: 'somewhere' }, 'shelfId'],
  ['retired on its shelf', 'motor', () => motor('M-7'), { retiredAt: '2026-01-01T00:00:00.000Z' }, 'retiredAt'],
  ['a maker of two lines', 'motor', () => motor('M-7'), { maker: 'Bran\ndal' }, 'maker'],
  ['a tag that is there', 'set', () => set('P-101'), { tag: 'P-102' }, 'tag'],
  ['a criticality of five', 'set', () => set('P-101'), { criticality: 5 }, 'criticality'],
  ['a pump of no description', 'set', () => set('P-101'), { 'pump.maker': 'Brandal' }, 'pump.description'],
  ['retired with a motor in it', 'set', () => set('P-101'), { retiredAt: '2026-01-01T00:00:00.000Z' }, 'retiredAt'],
  ['an area that is none', 'set', () => set('P-101'), { areaId: crypto.randomUUID() }, 'areaId'],
  ['a shelf with motors retired', 'shelf', () => here.shelfId, { retiredAt: '2026-01-01T00:00:00.000Z' }, 'retiredAt'],
  ['a shelf without a name', 'shelf', () => here.shelfId, { name: null }, 'name'],
];
test.each(REFUSED)('%s is refused at its field', async (_, thing, id, edit, path) => {
  const meant = edit.setId === 'P-101' ? { ...edit, setId: set('P-101') } : edit;
  const done = await change(thing, id(), meant);
  expect(done.outcome === 'refused' ? done.problems.map((problem) => problem.path) : done).toContain(path);
  expect(await entries()).toEqual([]);
});

test('two motors change places in one change', async () => {
  const done = await changeThings(here.actor, [
    { thing: 'motor', id: motor('M-7'), version: null, edit: { place: 'in-set', shelfId: null, setId: set('P-101') } },
    {
      thing: 'motor',
      id: motor('M-1'),
      version: null,
      edit: { place: 'on-shelf', setId: null, shelfId: here.shelfId },
    },
  ]);
  expect(done.outcome).toBe('saved');
  expect((await setByTag(here.actor, 'P-101'))?.set.failed?.id).toBe('M-7');
});

test('a change is undone whole, and the undo too', async () => {
  const done = await changeThings(here.actor, [
    { thing: 'set', id: set('P-101'), version: null, edit: { 'surroundings.ip': 'IP66', service: 'Syrup' } },
    { thing: 'set', id: set('P-102'), version: null, edit: { 'surroundings.ip': 'IP66' } },
  ]);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  const undone = await undoChange(here.actor, done.changeId);
  expect(undone).toMatchObject({ outcome: 'saved', things: 2 });
  const ips = async () =>
    Promise.all(['P-101', 'P-102'].map(async (tag) => (await setByTag(here.actor, tag))?.set.surroundings.ip));
  expect(await ips()).toEqual([null, null]);
  if (undone.outcome !== 'saved') throw new Error(undone.outcome);
  expect((await undoChange(here.actor, undone.changeId)).outcome).toBe('saved');
  expect(await ips()).toEqual(['IP66', 'IP66']);
});

test('an undo is refused when a field was changed since, and names it', async () => {
  const done = await change('motor', motor('M-7'), { maker: 'Brandal', serial: '001' });
  await change('motor', motor('M-7'), { maker: 'Holm & Fenn' });
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  expect(await undoChange(here.actor, done.changeId)).toEqual({
    outcome: 'changed-since',
    fields: [{ thing: 'motor', id: motor('M-7'), path: 'maker', left: 'Brandal', now: 'Holm & Fenn' }],
  });
  expect((await motorByNumber(here.actor, 'M-7'))?.row.serial).toBe('001');
});

test('what was entered is retired by its undo, and its number stays known', async () => {
  const done = await registerMotors(here.actor, [
    { motor: plate('M-9'), at: { place: 'on-shelf', shelfId: here.shelfId } },
  ]);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  expect((await undoChange(here.actor, done.changeId)).outcome).toBe('saved');
  expect((await motorByNumber(here.actor, 'M-9'))?.row).toMatchObject({
    place: 'scrapped',
    retiredAt: expect.any(Date),
  });
});

test('S26 S27 a stranger changes and undoes nothing; a technician may not', async () => {
  const done = await change('motor', motor('M-7'), { maker: 'Brandal' });
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  const stranger = await someone('administrator');
  const edit = { maker: 'Other' };
  expect(await changeThings(stranger, [{ thing: 'motor', id: motor('M-7'), version: null, edit }])).toMatchObject({
    outcome: 'refused',
  });
  expect(await undoChange(stranger, done.changeId)).toEqual({ outcome: 'unknown' });
  const technician = await colleague(here.actor.siteId, 'technician' satisfies Role, 'Bo Harrow');
  await expect(undoChange(technician, done.changeId)).rejects.toThrow('Not allowed');
  await expect(changeThings(technician, [])).rejects.toThrow('Not allowed');
  expect((await motorByNumber(here.actor, 'M-7'))?.row.maker).toBe('Brandal');
});

test('R6 a record is shown as it stood at any moment', async () => {
  const before = new Date();
  await pause();
  await change('motor', motor('M-7'), { maker: 'Brandal', 'ratings.0.rpm': 1740 });
  await pause();
  const between = new Date();
  await pause();
  await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7', { insulationMohm: 500 }), null);
  await change('motor', motor('M-7'), { maker: null });
  const stood = async (moment: Date) => {
    const told = await recordOn(here.actor, 'motor', motor('M-7'), moment);
    return told.outcome === 'stood' ? told.state : told;
  };
  expect(await stood(before)).toMatchObject({ place: 'on-shelf', shelfId: here.shelfId, 'ratings.0.rpm': 1750 });
  expect(await stood(before)).not.toHaveProperty('maker');
  expect(await stood(between)).toMatchObject({ place: 'on-shelf', maker: 'Brandal', 'ratings.0.rpm': 1740 });
  expect(await stood(new Date())).toMatchObject({ place: 'in-set', 'spare.insulationMohm': 500 });
  expect(await stood(between)).not.toHaveProperty(['spare.insulationMohm']);
  const setOn = async (moment: Date) => recordOn(here.actor, 'set', set('P-101'), moment);
  expect(await setOn(between)).toMatchObject({ outcome: 'stood', motorNumber: 'M-1' });
  expect(await setOn(new Date())).toMatchObject({ outcome: 'stood', motorNumber: 'M-7' });
  expect(await stood(new Date('2020-01-01'))).toMatchObject({ outcome: 'not-yet' });
  expect(await recordOn(await someone(), 'motor', motor('M-7'), before)).toEqual({ outcome: 'unknown' });
});

test('areas, stores and shelves are changed as well', async () => {
  const { areas } = await registerPlaces(here.actor, {
    areas: [{ name: 'Kitchen', surroundings: { ip: 'IP55' } }],
    stores: [],
  });
  const areaId = got(areas, 'Kitchen');
  expect((await change('area', areaId, { name: 'Syrup kitchen', 'surroundings.classification': 'none' })).outcome).toBe(
    'saved',
  );
  const area = await db.area.findFirstOrThrow({ where: { id: areaId } });
  expect(area).toMatchObject({ name: 'Syrup kitchen', surroundings: { ip: 'IP55', classification: null } });
  expect((await change('shelf', here.shelfId, { name: 'A2' })).outcome).toBe('saved');
});

/** The audit tells moments to the millisecond. */
const pause = () => new Promise((resolve) => setTimeout(resolve, 5));
