import { beforeEach, describe, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { changeThings } from '@/lib/register/commands/change-things';
import { exportReview } from '@/lib/register/commands/export-review';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { review } from '@/lib/register/queries/review';
import { keptReview } from '@/lib/register/review/kept-review';
import { ALL_OPEN, type ReviewFilter } from '@/lib/review/list/review-filter';
import { addMotors, addSets, colleague, got, plainSet, plate, smallPlant } from './plant';

const TODAY = '2026-11-28';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const asks = (differs: Partial<ReviewFilter> = {}, page = { page: 1, perPage: 50 }) =>
  review(here.actor, { filter: { ...ALL_OPEN, ...differs }, today: TODAY }, page);
const found = async (differs: Partial<ReviewFilter> = {}) =>
  (await asks(differs)).rows.map(({ tag, finding }) => `${tag} ${finding.rule}`);

async function edit(thing: 'set' | 'motor', name: string, told: Parameters<typeof changeThings>[1][number]['edit']) {
  const id = got(thing === 'set' ? here.sets : here.motors, name);
  const done = await changeThings(here.actor, [{ thing, id, version: null, edit: told }]);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
}

/** 5 hp is 3.73 kW: 1 kW of it is 27 %, 4.8 kW are 129 %. */
const atMotor = { 'coupling.type': 'coupling', 'load.atPumpRpm': 1750 };
const oversize = (tag: string) => edit('set', tag, { ...atMotor, 'load.shaftKw': 1 });
const overload = (tag: string) => edit('set', tag, { ...atMotor, 'load.shaftKw': 4.8 });

describe('what stands', () => {
  test('a plant whose sets suit their motors has no findings', async () => {
    expect(await asks()).toMatchObject({ rows: [], sum: { count: 0 }, sets: 2, empty: 0 });
  });

  test('each finding has its set, its load, what it costs and what would put it right', async () => {
    await edit('motor', 'M-2', { 'ratings.0.efficiencyPct': 89.5 });
    const two = { volts: 460, hertz: 60, hp: 2, rpm: 1750, amps: 2.9, pf: 0.78, efficiencyPct: 86.5 };
    await addMotors(here.actor, {
      motor: { ...plate('M-32'), ratings: [two] },
      at: { place: 'on-shelf', shelfId: here.shelfId },
    });
    await oversize('P-102');
    const { rows, sum } = await asks();
    const [first] = rows;
    expect(rows).toHaveLength(1);
    expect(first).toMatchObject({
      ...{ tag: 'P-102', setId: got(here.sets, 'P-102'), motor: 'M-2', criticality: 3, isAccepted: false },
      finding: { rule: 'oversized', urgency: 'next-time', cost: { kind: 'known' } },
    });
    expect(Math.round(first?.loadPct as number)).toBe(27);
    expect(first?.cured.cures[0]).toMatchObject({
      cure: { kind: 'shelf', motor: 'M-32' },
      energy: { moreKwhPerYear: { value: expect.any(Number) }, moreMoneyPerYear: { value: expect.any(Number) } },
    });
    const cost = first?.finding.cost;
    if (cost?.kind !== 'known') throw new Error('no cost');
    expect(sum).toMatchObject({ count: 1, open: 1, moneyHundredths: Math.round(100 * cost.money) });
  });

  test('a motor on a shelf that would carry the load is named with its place', async () => {
    const large = { ...plate('M-30'), ratings: [{ volts: 460, hertz: 60, hp: 7.5, rpm: 1750, amps: 9.6 }] };
    await addMotors(here.actor, { motor: large, at: { place: 'on-shelf', shelfId: here.shelfId } });
    await edit('set', 'P-101', { ...atMotor, 'load.shaftKw': 4.8, 'supply.overloadMaxA': 14 });
    const [row] = (await asks()).rows;
    expect(row?.cured.cures.find(({ cure }) => cure.kind === 'shelf')).toMatchObject({
      cure: { motor: 'M-30' },
      shelf: 'Main / A1',
    });
  });

  test('the soonest stands first, and groups come one after the other', async () => {
    await oversize('P-101');
    await overload('P-102');
    expect(await found()).toEqual(['P-102 overloaded', 'P-101 oversized']);
    expect(await found({ sort: 'tag' })).toEqual(['P-101 oversized', 'P-102 overloaded']);
    const { groups, sum } = await asks({ group: 'rule', sort: 'tag' });
    expect(groups?.map(({ key, sum: own }) => [key, own.count])).toEqual([
      ['overloaded', 1],
      ['oversized', 1],
    ]);
    expect(sum.count).toBe(2);
    expect(await found({ group: 'rule', sort: 'tag' })).toEqual(['P-102 overloaded', 'P-101 oversized']);
  });

  test('a page is a part of it, and the sum stays whole', async () => {
    await oversize('P-101');
    await overload('P-102');
    const second = await asks({}, { page: 2, perPage: 1 });
    expect(second.rows.map(({ tag }) => tag)).toEqual(['P-101']);
    expect(second.sum.count).toBe(2);
  });

  test('an empty set is counted and not judged, a retired one is not there', async () => {
    await addSets(here.actor, plainSet('P-103'));
    expect(await asks()).toMatchObject({ sets: 3, empty: 1 });
    await edit('motor', 'M-2', { setId: null, place: 'at-repair' });
    await edit('set', 'P-102', { retiredAt: new Date().toISOString() });
    expect(await asks()).toMatchObject({ sets: 2, empty: 1 });
  });

  test('technicians may not see it', async () => {
    const technician = await colleague(here.actor.siteId, 'technician', 'Per Ost');
    await expect(review(technician, { filter: ALL_OPEN, today: TODAY }, { page: 1, perPage: 5 })).rejects.toThrow(
      'review.read',
    );
  });
});

test('what goes out has every row that is asked for, whatever the page, and is in the audit', async () => {
  await oversize('P-101');
  await overload('P-102');
  const out: string[] = [];
  for await (const row of await exportReview(here.actor, { ...ALL_OPEN, sort: 'tag' }, TODAY))
    out.push(`${row.tag} ${row.cured.why ?? row.cured.cures.length}`);
  expect(out.map((line) => line.split(' ')[0])).toEqual(['P-101', 'P-102']);
  const where = { siteId: here.actor.siteId, action: 'register.export' };
  expect((await db.auditEntry.findFirstOrThrow({ where })).after).toEqual({ kind: 'review', rows: 2 });
});

describe('what is kept', () => {
  const setOf = async (tag: string) => (await keptReview(here.actor.siteId)).sets.get(got(here.sets, tag));

  test('without a change it is the very same; with one only the set that changed is judged anew', async () => {
    await oversize('P-101');
    const [one, other] = [await setOf('P-101'), await setOf('P-102')];
    expect(one?.findings).toHaveLength(1);
    expect(await keptReview(here.actor.siteId)).toBe(await keptReview(here.actor.siteId));
    await oversize('P-102');
    expect(await setOf('P-101')).toBe(one);
    expect(await setOf('P-102')).not.toBe(other);
    expect(await found({ sort: 'tag' })).toEqual(['P-101 oversized', 'P-102 oversized']);
  });

  test('a motor that comes to a shelf changes no finding, and cures are looked for anew', async () => {
    await overload('P-101');
    const before = await setOf('P-101');
    const large = { ...plate('M-31'), ratings: [{ volts: 460, hertz: 60, hp: 7.5, rpm: 1750, amps: 9.6 }] };
    await edit('set', 'P-101', { 'supply.overloadMaxA': 14 });
    const shelved = async () =>
      (await asks()).rows[0]?.cured.cures.flatMap(({ cure }) => (cure.kind === 'shelf' ? cure.motor : []));
    expect(await shelved()).toEqual([]);
    const judged = await setOf('P-101');
    expect(judged).not.toBe(before);
    await addMotors(here.actor, { motor: large, at: { place: 'on-shelf', shelfId: here.shelfId } });
    expect(await shelved()).toEqual(['M-31']);
    expect(await setOf('P-101')).toBe(judged);
  });

  test('another motor in the set is another case', async () => {
    await oversize('P-101');
    const before = await setOf('P-101');
    expect(await recordSwap(here.actor, here.swap('P-101', 'M-1', 'M-7'), null)).toMatchObject({ outcome: 'saved' });
    expect(await setOf('P-101')).not.toBe(before);
    expect((await asks()).rows.map(({ motor }) => motor)).toEqual(['M-7']);
  });
});
