import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { anonymisePerson } from '@/lib/register/commands/anonymise-person';
import { changeSiteSettings } from '@/lib/register/commands/change-site-settings';
import { changeThings } from '@/lib/register/commands/change-things';
import { closeFault } from '@/lib/register/commands/close-fault';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { registerArea, registerShelf } from '@/lib/register/commands/register-place';
import { reportFault } from '@/lib/register/commands/report-fault';
import { packSince } from '@/lib/register/queries/pack';
import { asOwner } from '../db/as-owner';
import { onClient } from '../db/on-client';
import { appliedFile } from './import';
import { othersDone } from './others-done';
import { fetched, type Kept, shown } from './packed';
import { addMotors, addSets, colleague, got, plainSet, plate, settings, smallPlant, someone } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
let areaId: string;
let storeId: string;
let old: Kept;
beforeEach(async () => {
  here = await smallPlant();
  const { actor, shelfId } = here;
  const area = await registerArea(actor, { name: 'Hall', surroundings: { ambientC: 30 } });
  if (area.outcome !== 'saved') throw new Error(area.outcome);
  areaId = area.id;
  await edit('set', 'P-101', { areaId, 'pump.description': 'lobe pump' });
  ({ storeId } = await db.shelf.findFirstOrThrow({ where: { id: shelfId } }));
  await othersDone();
  old = (await fetched(actor, null)).kept;
});

type Edit = Parameters<typeof changeThings>[1][number]['edit'];
const idOf = (thing: 'set' | 'motor', name: string) => got(thing === 'set' ? here.sets : here.motors, name);
const change = async (thing: 'set' | 'motor' | 'area' | 'store' | 'shelf', id: string, told: Edit) => {
  const done = await changeThings(here.actor, [{ thing, id, version: null, edit: told }]);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
};
const edit = (thing: 'set' | 'motor', name: string, told: Edit) => change(thing, idOf(thing, name), told);

/** What has changed since the phone was told brings it to where a phone stands that is told everything. */
async function broughtUpToDate(actor: Actor = here.actor) {
  const since = await fetched(actor, old);
  expect(since.pages[0]?.isWhole).toBe(false);
  expect(shown(since.kept)).toEqual(shown((await fetched(actor, null)).kept));
  return since;
}

test('a whole pack tells every set with its history and every motor with its place, and nothing has changed since', async () => {
  const { actor } = here;
  expect([...old.sets.values()].map(({ tag }) => tag).sort()).toEqual(['P-101', 'P-102']);
  expect(old.sets.get(idOf('set', 'P-101'))).toMatchObject({
    code: expect.stringMatching(/^[0-9A-Z]{8}$/),
    area: 'Hall',
    criticality: 1,
    pump: { description: 'lobe pump' },
    set: { tag: 'P-101', surroundings: { ambientC: 30 }, supply: { volts: 460 } },
    faults: [],
    history: [],
    retired: false,
  });
  expect(old.motors.get(idOf('motor', 'M-1'))).toMatchObject({
    number: 'M-1',
    place: 'in-set',
    setId: idOf('set', 'P-101'),
    motor: { id: 'M-1', frame: '184T' },
  });
  expect(old.motors.get(idOf('motor', 'M-7'))).toMatchObject({ place: 'on-shelf', store: 'Main', shelf: 'A1' });
  expect(old.site).toMatchObject({ timezone: 'Europe/Copenhagen', settings });
  const { pages } = await fetched(actor, old);
  expect(pages).toMatchObject([{ isWhole: false, sets: [], motors: [], next: null, userId: actor.userId }]);
});

const CHANGES: Record<string, () => Promise<unknown>> = {
  'an area renamed': () => change('area', areaId, { name: 'North hall' }),
  'an area made hotter': () => change('area', areaId, { 'surroundings.ambientC': 41 }),
  'a supply changed': () => edit('set', 'P-102', { 'supply.volts': 480 }),
  'a pump described otherwise': () => edit('set', 'P-101', { 'pump.description': 'screw pump' }),
  'a shelf renamed': () => change('shelf', here.shelfId, { name: 'B2' }),
  'a store renamed': () => change('store', storeId, { name: 'Yard' }),
  'a shelf added': () => registerShelf(here.actor, storeId, 'Z9'),
  'a swap recorded': () => recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null),
  'a motor spared from another set': () =>
    recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-2', { fromSetId: idOf('set', 'P-102') }), null),
  'a fault reported': () => reportFault(here.actor, { setId: idOf('set', 'P-102'), seen: [], says: 'Hums' }),
  'a fault reported and closed': async () => {
    await reportFault(here.actor, { setId: idOf('set', 'P-101'), seen: [], says: 'Hums' });
    await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null);
  },
  'a fault put right where it stands': async () => {
    await reportFault(here.actor, { setId: idOf('set', 'P-101'), seen: ['hot'], says: null });
    old = (await fetched(here.actor, null)).kept;
    await closeFault(here.actor, { setId: idOf('set', 'P-101'), how: 'Terminal tightened' });
  },
  'a motor retired': () =>
    edit('motor', 'M-8', { place: 'scrapped', shelfId: null, retiredAt: new Date().toISOString() }),
  'a motor renumbered after a swap': async () => {
    await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null);
    old = (await fetched(here.actor, null)).kept;
    await edit('motor', 'M-1', { id: 'M-1A' });
  },
  'a set renamed that spared its motor': async () => {
    await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-2', { fromSetId: idOf('set', 'P-102') }), null);
    old = (await fetched(here.actor, null)).kept;
    await edit('set', 'P-102', { tag: 'P-102A' });
  },
  'a figure of a plate changed': () => edit('motor', 'M-2', { 'ratings.0.amps': 6.9 }),
  'a set added': () => addSets(here.actor, plainSet('P-103')),
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

test.each(Object.entries(CHANGES))('what has changed brings an old pack up to date: %s', async (_name, happens) => {
  const before = shown(old);
  await happens();
  const { kept } = await broughtUpToDate();
  if (_name !== 'a fault reported and closed') expect(shown(kept)).not.toEqual(before);
});

test('so it does after any of them in any order, however small the pages', async () => {
  const names = Object.keys(CHANGES).filter((name) => !/after a swap|spared its|put right/.test(name));
  await fc.assert(
    fc.asyncProperty(
      fc.shuffledSubarray(names, { minLength: 2, maxLength: 6 }),
      fc.integer({ min: 1, max: 4 }),
      async (order, perPage) => {
        here = await smallPlant();
        const area = await registerArea(here.actor, { name: 'Hall' });
        areaId = area.outcome === 'saved' ? area.id : '';
        await edit('set', 'P-101', { areaId, 'pump.description': 'lobe pump' });
        ({ storeId } = await db.shelf.findFirstOrThrow({ where: { id: here.shelfId } }));
        let kept = (await fetched(here.actor, null, { perPage })).kept;
        for (const [i, name] of order.entries()) {
          await CHANGES[name]?.().catch(() => null); // some cannot follow others
          if (i % 2 === 0) kept = (await fetched(here.actor, kept, { perPage })).kept;
        }
        kept = (await fetched(here.actor, kept, { perPage })).kept;
        expect(shown(kept)).toEqual(shown((await fetched(here.actor, null)).kept));
      },
    ),
    { numRuns: 8 },
  );
});

describe('transactions that commit out of order', () => {
  test('what was begun before a cursor and committed after it is told with the next', () =>
    onClient(async (client) => {
      await client.query('BEGIN');
      await client.query(`UPDATE pump_set SET service = 'Oil' WHERE id = $1`, [idOf('set', 'P-102')]);
      await edit('set', 'P-101', { service: 'Water' }); // a later transaction, committed first
      old = (await fetched(here.actor, old)).kept;
      expect(old.sets.get(idOf('set', 'P-101'))?.service).toBe('Water');
      expect(old.sets.get(idOf('set', 'P-102'))?.service).toBeNull();
      await client.query('COMMIT');
      const { kept } = await broughtUpToDate();
      expect(kept.sets.get(idOf('set', 'P-102'))?.service).toBe('Oil');
    }));

  test('what was begun before it and written after it is told too', () =>
    onClient(async (client) => {
      await client.query('BEGIN');
      await client.query('SELECT pg_current_xact_id()');
      await edit('motor', 'M-2', { condition: 'Noisy' });
      old = (await fetched(here.actor, old)).kept;
      await client.query(`UPDATE motor SET condition = 'As new' WHERE id = $1`, [idOf('motor', 'M-8')]);
      await client.query('COMMIT');
      const { kept } = await broughtUpToDate();
      expect(kept.motors.get(idOf('motor', 'M-8'))?.condition).toBe('As new');
    }));

  test('what was rolled back is told to nobody', () =>
    onClient(async (client) => {
      await client.query('BEGIN');
      await client.query(`UPDATE motor SET condition = 'Gone' WHERE id = $1`, [idOf('motor', 'M-8')]);
      old = (await fetched(here.actor, old)).kept;
      await client.query('ROLLBACK');
      await broughtUpToDate();
    }));
});

describe('pages', () => {
  test('a swap between two pages is in the pack, whole, when the last page has come', async () => {
    let pages = 0;
    const between = async () => {
      pages += 1;
      if (pages === 2) await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null);
      if (pages === 4) await edit('set', 'P-102', { service: 'Water' });
    };
    const { kept, pages: told } = await fetched(here.actor, null, { perPage: 1, between });
    expect(told.every(({ isWhole }) => isWhole)).toBe(true);
    expect(shown(kept)).toEqual(shown((await fetched(here.actor, null)).kept));
    const held = [...kept.motors.values()].filter(({ setId }) => setId === idOf('set', 'P-101'));
    expect(held.map(({ number }) => number)).toEqual(['M-7']);
    expect((await fetched(here.actor, kept)).pages).toMatchObject([{ sets: [], motors: [] }]);
  });

  test('a set and a motor entered between two pages are not missed', async () => {
    let isDone = false;
    const between = async () => {
      if (isDone) return;
      isDone = true;
      await addSets(here.actor, plainSet('P-104'));
      await addMotors(here.actor, { motor: plate('M-44'), at: { place: 'on-shelf', shelfId: here.shelfId } });
    };
    const { kept } = await fetched(here.actor, null, { perPage: 1, between });
    expect(shown(kept)).toEqual(shown((await fetched(here.actor, null)).kept));
    expect([...kept.sets.values()].map(({ tag }) => tag)).toContain('P-104');
  });

  test('a page holds no more than it may', async () => {
    const { pages } = await fetched(here.actor, null, { perPage: 2 });
    expect(pages.length).toBeGreaterThan(3);
    for (const { sets, motors } of pages) expect(sets.length + motors.length).toBeLessThanOrEqual(2);
  });

  test('a page of another register, or of none, is refused', async () => {
    const first = await packSince(here.actor, { since: null, page: null }, 1);
    const page = first?.next ?? '';
    expect(await packSince(here.actor, { since: null, page }, 1)).not.toBeNull();
    for (const wrong of ['', 'x', `${page.slice(0, -4)}AAAA`, Buffer.from('[]').toString('base64url')])
      expect(await packSince(here.actor, { since: null, page: wrong }, 1)).toBeNull();
    await asOwner('UPDATE register_identity SET id = gen_random_uuid()');
    expect(await packSince(here.actor, { since: null, page }, 1)).toBeNull();
  });
});

describe('a whole pack is told to', () => {
  const isWhole = async (cursor: string) => (await packSince(here.actor, { since: cursor, page: null }))?.isWhole;

  test('who comes with what is no cursor', async () => {
    for (const cursor of ['', 'x', '1', '00000000-0000-0000-0000-000000000000', 'a.b.c', '9'.repeat(400)])
      expect(await isWhole(cursor)).toBe(true);
  });

  test('who was told by another register, as after a backup was restored', async () => {
    expect(await isWhole(old.cursor)).toBe(false);
    await asOwner('UPDATE register_identity SET id = gen_random_uuid()');
    expect(await isWhole(old.cursor)).toBe(true);
  });

  test('who is ahead of this register', async () => {
    const [register, from = '', nameless] = old.cursor.split('.');
    expect(await isWhole(`${register}.${BigInt(from) + 1_000_000n}.${nameless}`)).toBe(true);
  });

  test('who still has the name of somebody who is no longer named', async () => {
    const other = await colleague(here.actor.siteId, 'technician', 'Bo Rask');
    await reportFault(other, { setId: idOf('set', 'P-102'), seen: [], says: 'Hums' });
    old = (await fetched(here.actor, old)).kept;
    expect(JSON.stringify(shown(old))).toContain('Bo Rask');
    await db.user.update({ where: { id: other.userId }, data: { retiredAt: new Date() } });
    const office = { ...here.actor, role: 'administrator' as const };
    expect(await anonymisePerson(office, other.userId)).toMatchObject({ outcome: 'saved' });
    expect(await isWhole(old.cursor)).toBe(true);
    expect(JSON.stringify(shown((await fetched(here.actor, old)).kept))).not.toContain('Bo Rask');
  });
});

test('rows that came out of a backup with numbers yet to come are not told with every question', async () => {
  await asOwner('ALTER TABLE motor DISABLE TRIGGER USER');
  await asOwner(`UPDATE motor SET changed_in = 9000000000 WHERE site_id = '${here.actor.siteId}'`);
  await asOwner('ALTER TABLE motor ENABLE TRIGGER USER');
  expect((await fetched(here.actor, old)).pages).toMatchObject([{ motors: [] }]);
  expect((await fetched(here.actor, null)).kept.motors.size).toBe(4);
  await edit('motor', 'M-8', { condition: 'Noisy' });
  expect((await broughtUpToDate()).kept.motors.get(idOf('motor', 'M-8'))?.condition).toBe('Noisy');
});

test('S26 a pack tells nothing of another site, whatever cursor or page it is asked with', async () => {
  const stranger = await someone('administrator');
  const page = (await packSince(here.actor, { since: null, page: null }, 1))?.next ?? null;
  for (const asked of [
    { since: null, page: null },
    { since: old.cursor, page: null },
    { since: null, page },
  ]) {
    const told = await packSince(stranger, asked);
    expect(told).toMatchObject({ siteId: stranger.siteId, sets: [], motors: [], shelves: [] });
    expect(JSON.stringify(told)).not.toMatch(/P-10|M-[178]|Main|Hall/);
  }
});
