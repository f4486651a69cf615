import { randomUUID } from 'node:crypto';
import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { ok } from '@/lib/matching/finding';
import { type Judgement, recordSwap } from '@/lib/register/commands/record-swap';
import { reportFault } from '@/lib/register/commands/report-fault';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { motorHistory } from '@/lib/register/queries/motor-history';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setHistory } from '@/lib/register/queries/set-history';
import { swapById } from '@/lib/register/queries/swap-by-id';
import { colleague, got, smallPlant } from './plant';

const judgement: Judgement = {
  verdict: 'straight-swap',
  hours: 3,
  findings: [
    ok({ criterion: 'shaft-height', have: 114.3, need: 114.3, unit: 'mm', cite: 'NEMA MG 1' }, 'Same height.'),
  ],
  operatingPoint: null,
};

test('a swap moves both motors and keeps the verdict and findings as they stood', async () => {
  const { actor, swap } = await smallPlant();
  const done = await recordSwap(actor, swap('P-101', 'M-1', 'M-7', { insulationMohm: 120 }), judgement);
  if (done.outcome !== 'saved') throw new Error(done.outcome);
  expect((await setByTag(actor, 'P-101'))?.set.failed?.id).toBe('M-7');
  expect((await motorByNumber(actor, 'M-1'))?.whereabouts).toMatchObject({ place: 'at-repair', setTag: null });
  expect((await motorByNumber(actor, 'M-7'))?.whereabouts).toMatchObject({
    place: 'in-set',
    setTag: 'P-101',
    shelf: null,
  });
  expect(await swapById(actor, done.swapId)).toMatchObject({
    verdict: 'straight-swap',
    findings: judgement.findings,
    hours: 3,
    motorIn: 'M-7',
    motorOut: 'M-1',
    why: 'Bearing',
    by: 'Ida Fenn',
  });
});

test('a swap shows in the histories of the set and of both motors', async () => {
  const { actor, sets, motors, swap } = await smallPlant();
  await recordSwap(actor, swap('P-101', 'M-1', 'M-7'), judgement);
  const line = expect.objectContaining({ kind: 'swap', setTag: 'P-101', motorIn: 'M-7', motorOut: 'M-1' });
  expect(await setHistory(actor, got(sets, 'P-101'))).toContainEqual(line);
  expect(await motorHistory(actor, got(motors, 'M-1'))).toContainEqual(line);
  expect(await motorHistory(actor, got(motors, 'M-7'))).toContainEqual(line);
});

test('R4 of many swaps of one motor at once exactly one stands, and the others are told who and when', async () => {
  const { actor, swap } = await smallPlant();
  const other = await colleague(actor.siteId, 'technician', 'Bo Harrow');
  const tries = [
    ...Array.from({ length: 4 }, () => recordSwap(actor, swap('P-101', 'M-1', 'M-7'), null)),
    ...Array.from({ length: 4 }, () => recordSwap(other, swap('P-102', 'M-2', 'M-7'), null)),
  ];
  const outcomes = await Promise.all(tries);
  expect(outcomes.filter(({ outcome }) => outcome === 'saved')).toHaveLength(1);
  const told = outcomes.flatMap((one) => (one.outcome === 'taken' ? [one] : []));
  expect(told).toHaveLength(7);
  const stands = await db.swap.findFirstOrThrow({ where: { siteId: actor.siteId }, include: { by: true, set: true } });
  expect(await db.swap.count({ where: { siteId: actor.siteId } })).toBe(1);
  for (const { by, at, setTag, motorNumber } of told) {
    expect([by, setTag, motorNumber]).toEqual([stands.by.name, stands.set.tag, 'M-7']);
    expect(Math.abs((at?.getTime() ?? 0) - stands.at.getTime())).toBeLessThan(2000);
  }
});

test('R4 two motors put into one set at once: one stands, the other is told what stands there now', async () => {
  const { actor, swap } = await smallPlant();
  const outcomes = await Promise.all([
    recordSwap(actor, swap('P-101', 'M-1', 'M-7'), null),
    recordSwap(actor, swap('P-101', 'M-1', 'M-8'), null),
  ]);
  expect(outcomes.map(({ outcome }) => outcome).sort()).toEqual(['saved', 'taken']);
  const now = (await setByTag(actor, 'P-101'))?.set.failed?.id;
  expect(outcomes.find(({ outcome }) => outcome === 'taken')).toMatchObject({
    what: 'set',
    by: 'Ida Fenn',
    setTag: 'P-101',
    motorNumber: now,
  });
});

test('R4 two sets that take each other’s motor at once do not wait for each other for ever', async () => {
  const { actor, sets, swap } = await smallPlant();
  const outcomes = await Promise.all([
    recordSwap(actor, swap('P-101', 'M-1', 'M-2', { fromSetId: got(sets, 'P-102') }), null),
    recordSwap(actor, swap('P-102', 'M-2', 'M-1', { fromSetId: got(sets, 'P-101') }), null),
  ]);
  expect(outcomes.map(({ outcome }) => outcome).sort()).toEqual(['saved', 'taken']);
});

test('R2 a request sent twice is carried out once, at once or later', async () => {
  const { actor, swap } = await smallPlant();
  const request = swap('P-101', 'M-1', 'M-7');
  const both = await Promise.all([recordSwap(actor, request, null), recordSwap(actor, request, null)]);
  const later = await recordSwap(actor, request, null);
  const ids = [...both, later].map((one) => (one.outcome === 'saved' ? one.swapId : one.outcome));
  expect(new Set(ids).size).toBe(1);
  expect(await db.swap.count({ where: { siteId: actor.siteId } })).toBe(1);
  expect(await recordSwap(actor, { ...request, why: 'Water' }, null)).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'key' }],
  });
});

test('a motor spared from another set leaves that set empty', async () => {
  const { actor, sets, swap } = await smallPlant();
  const fromSetId = got(sets, 'P-102');
  expect(await recordSwap(actor, swap('P-101', 'M-1', 'M-2', { fromSetId }), null)).toMatchObject({ outcome: 'saved' });
  expect((await setByTag(actor, 'P-102'))?.set.failed).toBeNull();
  expect(await setHistory(actor, fromSetId)).toContainEqual(
    expect.objectContaining({ kind: 'swap', setTag: 'P-101', fromSetTag: 'P-102' }),
  );
});

test('a motor in another set is not taken by somebody who thinks it is on a shelf', async () => {
  const { actor, swap } = await smallPlant();
  expect(await recordSwap(actor, swap('P-101', 'M-1', 'M-2'), null)).toMatchObject({
    outcome: 'taken',
    what: 'motor',
    setTag: 'P-102',
  });
});

test('an empty set is filled, and the motor that came out can go to a shelf', async () => {
  const { actor, sets, motors, shelfId, swap } = await smallPlant();
  await recordSwap(
    actor,
    swap('P-101', 'M-1', 'M-2', { fromSetId: got(sets, 'P-102'), outTo: { place: 'on-shelf', shelfId } }),
    null,
  );
  const fill = { ...swap('P-102', 'M-2', 'M-1'), motorOutId: null, outTo: null };
  expect(await recordSwap(actor, fill, null)).toMatchObject({ outcome: 'saved' });
  expect((await motorByNumber(actor, 'M-1'))?.row.setId).toBe(got(sets, 'P-102'));
  expect(got(motors, 'M-1')).toBeTruthy();
});

test('the shims told are there the next time, the open fault is closed, and the reading is the motor’s', async () => {
  const { actor, sets, swap } = await smallPlant();
  await reportFault(actor, { setId: got(sets, 'P-101'), seen: [], says: 'Hums and trips' });
  expect((await setByTag(actor, 'P-101'))?.faults).toMatchObject([{ says: 'Hums and trips', by: 'Ida Fenn' }]);
  await recordSwap(actor, swap('P-101', 'M-1', 'M-7', { shimsPresentMm: 3.8, insulationMohm: 55 }), null);
  const after = await setByTag(actor, 'P-101');
  expect(after?.set.base.shimsPresentMm).toBe(3.8);
  expect(after?.faults).toEqual([]);
  expect(after?.set.failed?.spare.insulationMohm).toBe(55);
});

test('S26 nothing of another site can be swapped', async () => {
  const here = await smallPlant();
  const there = await smallPlant();
  expect(await recordSwap(there.actor, here.swap('P-101', 'M-1', 'M-7'), null)).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'setId' }],
  });
  const mixed = { ...there.swap('P-101', 'M-1', 'M-7'), motorInId: got(here.motors, 'M-7') };
  expect(await recordSwap(there.actor, mixed, null)).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'motorInId' }],
  });
  const shelf = there.swap('P-101', 'M-1', 'M-7', { outTo: { place: 'on-shelf', shelfId: here.shelfId } });
  expect(await recordSwap(there.actor, shelf, null)).toMatchObject({
    outcome: 'refused',
    problems: [{ path: 'outTo.shelfId' }],
  });
  expect((await setByTag(there.actor, 'P-101'))?.set.failed?.id).toBe('M-1');
});

test.each([
  ['the same motor out and in', { motorInId: 'out' }, 'motorInId'],
  ['a motor out that goes nowhere', { outTo: null }, 'outTo'],
  ['a motor from the set itself', { fromSetId: 'self' }, 'fromSetId'],
])('%s is refused', async (_name, differs, path) => {
  const { actor, swap } = await smallPlant();
  const plain = swap('P-101', 'M-1', 'M-7');
  const filled = Object.fromEntries(
    Object.entries(differs).map(([key, value]) => [
      key,
      value === 'out' ? plain.motorOutId : value === 'self' ? plain.setId : value,
    ]),
  );
  expect(await recordSwap(actor, { ...plain, ...filled, key: randomUUID() }, null)).toMatchObject({
    outcome: 'refused',
    problems: [{ path }],
  });
});
