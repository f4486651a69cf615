import { beforeAll, describe, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { lookAlikeOf, normOf } from '@/lib/plant/look-alike';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { findSets } from '@/lib/register/queries/find-sets';
import { nearestTags } from '@/lib/register/queries/nearest-tags';
import { asOwner } from '../db/as-owner';
import { addSets, got, plainSet, someone } from './plant';

let actor: Actor;
beforeAll(async () => {
  actor = await someone('technician');
  const planner = { ...actor, role: 'planner' as const };
  const { areas } = await registerPlaces(planner, {
    areas: [{ name: 'Separation' }, { name: 'Boiler house' }],
    stores: [],
  });
  const lobe = { description: 'Lobe pump, 3 in' };
  await addSets(
    planner,
    plainSet('P-101', { service: 'Cream transfer', areaId: got(areas, 'Separation'), pump: lobe }),
    plainSet('P-102', { service: 'Whey return', areaId: got(areas, 'Separation'), pump: lobe }),
    plainSet('P-201A', { service: 'Skim milk supply', areaId: got(areas, 'Separation') }),
    plainSet('P-201B', { service: 'Skim milk supply, stand-by', areaId: got(areas, 'Separation') }),
    plainSet('BFW-1508', {
      service: 'Feed water',
      areaId: got(areas, 'Boiler house'),
      pump: { description: 'Multistage pump' },
    }),
    plainSet('CIP-SUP-02', { service: 'Caustic supply', areaId: got(areas, 'Separation') }),
    ...Array.from({ length: 150 }, (_, i) => plainSet(`X-${7000 + i}`, { service: 'Cooling' })),
  );
});

describe('a tag is found first', () => {
  test.each([
    ['P-101', 'P-101', 'as it is written'],
    ['p101', 'P-101', 'in small letters without its hyphen'],
    ['  p 101 ', 'P-101', 'with spaces'],
    ['P-1O1', 'P-101', 'with an O for a nought'],
    ['P-lOl', 'P-101', 'with Ls and an O'],
    ['BFW-I5O8', 'BFW-1508', 'with I and O'],
    ['8FW-1SOB', 'BFW-1508', 'with B, S, O and 8 mixed up'],
    ['P-2O1A', 'P-201A', 'with an O'],
    ['P-ZO1B', 'P-201B', 'with a Z for a 2'],
    ['BFW1580', 'BFW-1508', 'with two figures changed over'],
    ['BFW-150', 'BFW-1508', 'with its last figure left off'],
    ['BFW-15088', 'BFW-1508', 'with a figure typed twice'],
    ['BWF-1508', 'BFW-1508', 'with two letters changed over'],
    ['BFX-1508', 'BFW-1508', 'with one wrong letter'],
    ['CIPSUP2', 'CIP-SUP-02', 'without its nought'],
    ['CIP-SUB-02', 'CIP-SUP-02', 'with one wrong letter'],
  ])('%s finds %s, %s', async (typed, tag) => {
    expect((await findSets(actor, typed))[0]?.tag).toBe(tag);
  });
});

describe('words find sets', () => {
  test.each([
    ['cream', ['P-101']],
    ['craem transfer', ['P-101']],
    ['lobe pump', ['P-101', 'P-102']],
    ['boiler', ['BFW-1508']],
    ['multistge', ['BFW-1508']],
    ['skim standby', ['P-201B']],
  ])('%s finds %s', async (typed, tags) => {
    expect((await findSets(actor, typed)).map(({ tag }) => tag).sort()).toEqual(tags);
  });

  test('a new name of the area is found at once', async () => {
    await db.area.updateMany({ where: { siteId: actor.siteId, name: 'Boiler house' }, data: { name: 'Steam plant' } });
    expect((await findSets(actor, 'steam plant')).map(({ tag }) => tag)).toEqual(['BFW-1508']);
    expect(await findSets(actor, 'boiler')).toEqual([]);
  });
});

test('the beginning of tags lists them', async () => {
  expect((await findSets(actor, 'P-20')).map(({ tag }) => tag).slice(0, 2)).toEqual(['P-201A', 'P-201B']);
});

test.each(['', '   ', '--', '%', '_', "';--", '\\', 'ß'.repeat(5000), '\u0000'])(
  '%j finds nothing and does no harm',
  async (typed) => {
    expect(await findSets(actor, typed)).toEqual([]);
  },
);

test('R10 no answer holds more than fifty', async () => {
  expect(await findSets(actor, 'X-7', 1000)).toHaveLength(50);
});

test('an unknown tag names the nearest ones', async () => {
  const near = await nearestTags(actor, 'P-203A');
  expect(near[0]).toMatchObject({ tag: 'P-201A', how: 'near', errors: 1 });
  expect(near.length).toBeLessThanOrEqual(5);
});

test('S26 another site’s sets are not found', async () => {
  const stranger = await someone();
  expect(await findSets(stranger, 'P-101')).toEqual([]);
  expect(await nearestTags(stranger, 'P-101')).toEqual([]);
  expect(await findSets(stranger, 'cream')).toEqual([]);
});

test('our own folding is the database’s', async () => {
  const rows = await db.pumpSet.findMany({
    where: { siteId: actor.siteId },
    select: { tag: true, norm: true, lookAlike: true },
  });
  for (const { tag, norm, lookAlike } of rows) expect([normOf(tag), lookAlikeOf(tag)]).toEqual([norm, lookAlike]);
});

test('a search among twenty thousand sets finds what was meant', async () => {
  const many = await someone();
  await asOwner(`INSERT INTO pump_set (site_id, tag, service, mounting, needs)
    SELECT '${many.siteId}', 'Q-' || n, 'Circulation ' || n, 'foot', '{}' FROM generate_series(10000, 29999) AS n;
    ANALYZE pump_set`);
  const found = async (typed: string) => (await findSets(many, typed)).map(({ tag }) => tag);
  expect((await found('Q-I2345'))[0]).toBe('Q-12345');
  expect((await found('circulatoin 12345'))[0]).toBe('Q-12345');
  expect(await found('nothing like it')).toEqual([]);
});
