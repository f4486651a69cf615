import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { db } from '@/lib/db/client';
import { changeSiteSettings } from '@/lib/register/commands/change-site-settings';
import { changeThings } from '@/lib/register/commands/change-things';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { registerArea, registerShelf } from '@/lib/register/commands/register-place';
import type { KeptPlant } from '@/lib/register/kept-plant/kept-plant';
import { plantNow } from '@/lib/register/kept-plant/plant-now';
import { plantOf } from '@/lib/register/kept-plant/plant-of';
import { readingNow } from '@/lib/register/kept-plant/reading';
import { asOwner } from '../db/as-owner';
import { onClient } from '../db/on-client';
import { appliedFile } from './import';
import { othersDone } from './others-done';
import { addMotors, addSets, got, plainSet, plate, settings, smallPlant, someone } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
let areaId: string;
let storeId: string;
let before: KeptPlant;

async function anyPlant() {
  here = await smallPlant();
  const area = await registerArea(here.actor, { name: 'Hall', surroundings: { ambientC: 30 } });
  areaId = area.outcome === 'saved' ? area.id : '';
  await edit('set', 'P-101', { areaId, 'pump.description': 'lobe pump' });
  ({ storeId } = await db.shelf.findFirstOrThrow({ where: { id: here.shelfId } }));
  await othersDone();
  before = await plantNow(here.actor);
}
beforeEach(anyPlant);

type Edit = Parameters<typeof changeThings>[1][number]['edit'];
const idOf = (thing: 'set' | 'motor', name: string) => got(thing === 'set' ? here.sets : here.motors, name);
const change = async (thing: 'set' | 'motor' | 'area' | 'store' | 'shelf', id: string, told: Edit) => {
  const done = await changeThings(here.actor, [{ thing, id, version: null, edit: told }]);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
};
const edit = (thing: 'set' | 'motor', name: string, told: Edit) => change(thing, idOf(thing, name), told);

const shown = ({ sets, motors, ...site }: KeptPlant) => ({
  ...site,
  sets: [...sets.values()].sort((a, b) => (a.setId < b.setId ? -1 : 1)),
  motors: [...motors.values()].sort((a, b) => (a.motorId < b.motorId ? -1 : 1)),
});
/** Read whole, by nobody who has read before. */
const anew = async () => plantOf(await readingNow(here.actor.siteId, null), null);

test('it holds every set with the motor in it and every motor with its place', () => {
  expect(before).toMatchObject({ siteId: here.actor.siteId, timezone: 'Europe/Copenhagen', settings });
  expect(before.sets.get(idOf('set', 'P-101'))).toMatchObject({
    ...{ tag: 'P-101', criticality: 1, areaId, area: 'Hall', pump: 'lobe pump', motorId: idOf('motor', 'M-1') },
    set: { tag: 'P-101', failed: { id: 'M-1', frame: '184T' }, surroundings: { ambientC: 30 } },
  });
  expect(before.motors.get(idOf('motor', 'M-7'))).toMatchObject({
    ...{ place: 'on-shelf', setId: null, store: 'Main', shelf: 'A1' },
    motor: { id: 'M-7', frame: '184T' },
  });
  expect([before.sets.size, before.motors.size]).toEqual([2, 4]);
});

const CHANGES: Record<string, () => Promise<unknown>> = {
  'an area renamed': () => change('area', areaId, { name: 'North hall' }),
  'an area made hotter': () => change('area', areaId, { 'surroundings.ambientC': 41 }),
  'a supply changed': () => edit('set', 'P-102', { 'supply.volts': 480 }),
  'a pump described otherwise': () => edit('set', 'P-101', { 'pump.description': 'screw pump' }),
  'a shelf renamed': () => change('shelf', here.shelfId, { name: 'B2' }),
  'a store renamed': () => change('store', storeId, { name: 'Yard' }),
  'a swap recorded': () => recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null),
  'a motor spared from another set': () =>
    recordSwap(here.actor, here.swap('P-102', 'M-2', 'M-1', { fromSetId: idOf('set', 'P-101') }), null),
  'a motor renumbered': () => edit('motor', 'M-1', { id: 'M-1A' }),
  'a set renamed': () => edit('set', 'P-102', { tag: 'P-102A' }),
  'a figure of a plate changed': () => edit('motor', 'M-2', { 'ratings.0.amps': 6.9 }),
  'a motor measured': () => edit('motor', 'M-7', { 'measured.holeMm': 11 }),
  'a motor retired': () =>
    edit('motor', 'M-8', { place: 'scrapped', shelfId: null, retiredAt: new Date().toISOString() }),
  'a motor moved': async () => {
    const shelf = await registerShelf(here.actor, storeId, 'Z9');
    if (shelf.outcome === 'saved') await edit('motor', 'M-8', { shelfId: shelf.id });
  },
  'a set added': () => addSets(here.actor, plainSet('P-103')),
  'a motor added': () =>
    addMotors(here.actor, { motor: plate('M-44'), at: { place: 'on-shelf', shelfId: here.shelfId } }),
  'settings changed': async () => {
    const { version } = await db.site.findUniqueOrThrow({ where: { id: here.actor.siteId } });
    await changeSiteSettings({ ...here.actor, role: 'administrator' }, version, { ...settings, shimLimitMm: 9 });
  },
  'a file imported': () =>
    appliedFile(
      here.actor,
      'motors',
      'Plant number;Frame;Volts;Store;Shelf\nM-7;182T;460;Main;A1\nM-9;184T;460;Main;C3\n',
    ),
};

test.each(Object.entries(CHANGES))(
  'what has changed brings it to where it stands when read whole: %s',
  async (_, happens) => {
    await happens();
    const after = await plantNow(here.actor);
    expect(shown(after)).toEqual(shown(await anew()));
    expect(shown(after)).not.toEqual(shown(before));
  },
);

test('so it does after any of them in any order', async () => {
  await fc.assert(
    fc.asyncProperty(fc.shuffledSubarray(Object.keys(CHANGES), { minLength: 2, maxLength: 7 }), async (order) => {
      await anyPlant();
      for (const [i, name] of order.entries()) {
        await CHANGES[name]?.().catch(() => null); // some cannot follow others
        if (i % 2 === 0) await plantNow(here.actor);
      }
      expect(shown(await plantNow(here.actor))).toEqual(shown(await anew()));
    }),
    { numRuns: 8 },
  );
});

test('where nothing has changed it is the very same, and what has not changed is in the next one', async () => {
  expect(await plantNow(here.actor)).toBe(before);
  await edit('motor', 'M-8', { condition: 'Noisy' });
  const after = await plantNow(here.actor);
  expect(after).not.toBe(before);
  for (const [id, set] of before.sets) expect(after.sets.get(id)).toBe(set);
  for (const [id, motor] of before.motors) if (id !== idOf('motor', 'M-8')) expect(after.motors.get(id)).toBe(motor);
});

test('who comes while it is being brought up to date gets what they had committed before they came', async () => {
  const first = plantNow(here.actor);
  await edit('set', 'P-102', { service: 'Rinse' });
  const [, second, third] = await Promise.all([first, plantNow(here.actor), plantNow(here.actor)]);
  expect(second.sets.get(idOf('set', 'P-102'))?.service).toBe('Rinse');
  expect(third).toBe(second);
});

describe('transactions that commit out of order', () => {
  test('what was begun before a reading and committed after it is in the next', () =>
    onClient(async (client) => {
      await client.query('BEGIN');
      await client.query(`UPDATE pump_set SET service = 'Oil' WHERE id = $1`, [idOf('set', 'P-102')]);
      await edit('set', 'P-101', { service: 'Water' }); // a later transaction, committed first
      const during = await plantNow(here.actor);
      expect(during.sets.get(idOf('set', 'P-101'))?.service).toBe('Water');
      expect(during.sets.get(idOf('set', 'P-102'))?.service).toBeNull();
      await client.query('COMMIT');
      const after = await plantNow(here.actor);
      expect(after.sets.get(idOf('set', 'P-102'))?.service).toBe('Oil');
      expect(shown(after)).toEqual(shown(await anew()));
    }));

  test('what was begun before it and written after it is too', () =>
    onClient(async (client) => {
      await client.query('BEGIN');
      await client.query('SELECT pg_current_xact_id()');
      await edit('motor', 'M-2', { condition: 'Noisy' });
      await plantNow(here.actor);
      await client.query(`UPDATE motor SET condition = 'As new' WHERE id = $1`, [idOf('motor', 'M-8')]);
      await client.query('COMMIT');
      expect((await plantNow(here.actor)).motors.get(idOf('motor', 'M-8'))?.condition).toBe('As new');
    }));

  test('what was rolled back is in none', () =>
    onClient(async (client) => {
      await client.query('BEGIN');
      await client.query(`UPDATE motor SET condition = 'Gone' WHERE id = $1`, [idOf('motor', 'M-8')]);
      expect(await plantNow(here.actor)).toBe(before);
      await client.query('ROLLBACK');
      expect(await plantNow(here.actor)).toBe(before);
    }));
});

test('a register restored from a backup, with the versions it had, is read whole', async () => {
  const id = idOf('motor', 'M-8');
  await asOwner('ALTER TABLE motor DISABLE TRIGGER USER');
  await asOwner(`UPDATE motor SET measured = '{"holeMm": 9}' WHERE id = '${id}'`);
  await asOwner('ALTER TABLE motor ENABLE TRIGGER USER');
  expect((await plantNow(here.actor)).motors.get(id)?.motor.measured.holeMm).toBeNull(); // nothing says that it changed
  await asOwner('UPDATE register_identity SET id = gen_random_uuid()');
  expect((await plantNow(here.actor)).motors.get(id)?.motor.measured.holeMm).toBe(9);
});

test('a plant of several pages is read whole', async () => {
  await addSets(here.actor, ...Array.from({ length: 205 }, (_, i) => plainSet(`R-${i}`)));
  const whole = await anew();
  expect(whole.sets.size).toBe(207);
  expect(shown(await plantNow(here.actor))).toEqual(shown(whole));
});

test('a reading that fails leaves what was kept, and the next one goes on from it', async () => {
  const failing = vi.spyOn(db, '$transaction').mockRejectedValueOnce(new Error('the database is away'));
  await expect(plantNow(here.actor)).rejects.toThrow('the database is away');
  failing.mockRestore();
  expect(await plantNow(here.actor)).toBe(before);
});

test('S26 a site is kept for itself: another has nothing of it', async () => {
  const stranger = await someone('administrator');
  expect(await plantNow(stranger)).toMatchObject({ siteId: stranger.siteId, sets: new Map(), motors: new Map() });
  await addSets(stranger, plainSet('P-101'));
  const theirs = await plantNow(stranger);
  expect([theirs.sets.size, theirs.motors.size]).toEqual([1, 0]);
  expect(await plantNow(here.actor)).toBe(before);
});
