import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { closeFault } from '@/lib/register/commands/close-fault';
import { exportFaults } from '@/lib/register/commands/export-faults';
import { keepPicture } from '@/lib/register/commands/keep-picture';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { reportFault } from '@/lib/register/commands/report-fault';
import { CARRIERS } from '@/lib/register/outbox/carriers';
import { faultById } from '@/lib/register/queries/fault-by-id';
import { faultTimes } from '@/lib/register/queries/fault-times';
import { faults } from '@/lib/register/queries/faults';
import { picturesOf } from '@/lib/register/queries/pictures-of';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { setHistory } from '@/lib/register/queries/set-history';
import { jpeg } from '../picture/made';
import { colleague, got, smallPlant, someone } from './plant';

const EVERY = { areaId: null, days: 30 };

async function failed(seen: ('trip' | 'smell')[] = ['trip']) {
  const plant = await smallPlant();
  const setId = got(plant.sets, 'P-101');
  const done = await reportFault(plant.actor, { setId, seen });
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  return { ...plant, setId, faultId: done.faultId };
}

describe('a fault', () => {
  test('is told by what was seen alone, and names the motor that stood there', async () => {
    const { actor, faultId } = await failed(['smell', 'trip']);
    expect(await faultById(actor, faultId)).toMatchObject({
      ...{ tag: 'P-101', motor: 'M-1', says: 'Tripped, smell or smoke', by: 'Ida Fenn' },
      ...{ closedAt: null, closedBy: null, swapId: null },
    });
  });

  test('that tells nothing is refused, and so is what nobody can see', async () => {
    const { actor, sets } = await smallPlant();
    const setId = got(sets, 'P-101');
    expect(await reportFault(actor, { setId, seen: [] })).toMatchObject({ problems: [{ path: 'seen' }] });
    const odd = { setId, seen: ['ghost'] } as never;
    expect(await reportFault(actor, odd)).toMatchObject({ outcome: 'refused', problems: [{ path: 'seen.0' }] });
  });

  test('R2 is noted once under one key, however many send it at once; with other words it is refused', async () => {
    const { actor, sets } = await smallPlant();
    const asked = { key: randomUUID(), setId: got(sets, 'P-101'), seen: ['trip' as const] };
    const done = await Promise.all([1, 2, 3, 4].map(() => reportFault(actor, asked)));
    expect(new Set(done.map((one) => (one.outcome === 'saved' ? one.faultId : one.outcome))).size).toBe(1);
    expect(done.filter((one) => one.outcome === 'saved' && !one.isRepeat)).toHaveLength(1);
    expect(await reportFault(actor, { ...asked, seen: ['smell'] })).toMatchObject({ problems: [{ path: 'key' }] });
  });

  test('R5 stands by the server’s clock; the phone’s is a note', async () => {
    const { actor, sets } = await smallPlant();
    const before = Date.now();
    const seenAt = '2031-01-01T03:12:00+01:00';
    await reportFault(actor, { setId: got(sets, 'P-101'), seen: ['trip'], seenAt });
    const [open] = (await faults(actor, EVERY)).open;
    expect(open?.at.getTime()).toBeGreaterThan(before - 5_000);
    expect(open?.at.getTime()).toBeLessThan(Date.now() + 5_000);
    expect(open?.seenAt).toEqual(new Date(seenAt));
  });

  test('stays open beside a second one, and both end with the swap', async () => {
    const { actor, setId, faultId, swap } = await failed();
    await reportFault(actor, { setId, seen: ['smell'], says: 'Varnish' });
    expect((await setByTag(actor, 'P-101'))?.faults).toHaveLength(2);
    const bo = await colleague(actor.siteId, 'technician', 'Bo Harrow');
    const done = await recordSwap(bo, swap('P-101', 'M-1', 'M-7'), null);
    if (done.outcome !== 'saved') throw new Error(done.outcome);
    expect((await setByTag(actor, 'P-101'))?.faults).toEqual([]);
    const told = await faultById(actor, faultId);
    expect(told).toMatchObject({ closedBy: 'swap', swapId: done.swapId, closer: 'Bo Harrow', closedHow: null });
    const { at } = await db.swap.findFirstOrThrow({ where: { id: done.swapId } });
    expect(told?.closedAt?.getTime()).toBeGreaterThanOrEqual(at.getTime());
  });

  test('of a set that stood empty ends with the swap too', async () => {
    const { actor, sets, motors, swap } = await smallPlant();
    const setId = got(sets, 'P-101');
    await db.motor.update({
      where: { siteId_id: { siteId: actor.siteId, id: got(motors, 'M-1') } },
      data: { place: 'at-repair', setId: null },
    });
    await reportFault(actor, { setId, seen: ['trip'] });
    const empty = { ...swap('P-101', 'M-1', 'M-7'), motorOutId: null, outTo: null };
    expect((await recordSwap(actor, empty, null)).outcome).toBe('saved');
    expect((await setByTag(actor, 'P-101'))?.faults).toEqual([]);
  });

  test('of the set that gave its motor stays open', async () => {
    const { actor, sets, swap } = await smallPlant();
    await reportFault(actor, { setId: got(sets, 'P-102'), seen: ['trip'] });
    await recordSwap(actor, swap('P-101', 'M-1', 'M-2', { fromSetId: got(sets, 'P-102') }), null);
    expect((await setByTag(actor, 'P-102'))?.faults).toHaveLength(1);
  });

  test('ends by a repair where it stands, once, with who and what was done', async () => {
    const { actor, faultId } = await failed();
    const bo = await colleague(actor.siteId, 'technician', 'Bo Harrow');
    expect(await closeFault(bo, { faultId, how: 'Reset the overload' })).toEqual({
      ...{ outcome: 'saved', faultIds: [faultId] },
    });
    expect(await closeFault(actor, { faultId, how: 'Again' })).toEqual({ outcome: 'closed-before', faultId });
    expect(await faultById(actor, faultId)).toMatchObject({
      ...{ closedBy: 'repair', closedHow: 'Reset the overload', closer: 'Bo Harrow', swapId: null },
    });
    const line = (await setHistory(actor, (await setByTag(actor, 'P-101'))?.row.id ?? '')).find(
      ({ kind }) => kind === 'fault',
    );
    expect(line).toMatchObject({ closedBy: 'repair', closedHow: 'Reset the overload' });
  });

  test('is closed by its key as by its id, and all of a set by the set', async () => {
    const { actor, setId } = await failed();
    const faultKey = randomUUID();
    await reportFault(actor, { key: faultKey, setId, seen: ['smell'] });
    expect(await closeFault(actor, { faultKey, how: 'Dried' })).toMatchObject({ outcome: 'saved' });
    await reportFault(actor, { setId, seen: ['smell'] });
    expect(await closeFault(actor, { setId, how: 'Bearing' })).toMatchObject({
      faultIds: [expect.any(String), expect.any(String)],
    });
  });

  test.each<[string, object, string]>([
    ['that says not what was done', { setId: 'SET', how: '  ' }, 'how'],
    ['that names no fault', { how: 'Reset' }, 'faultId'],
    ['that names two', { setId: 'SET', faultKey: '7d3f0a52-8a6e-4b53-9b1c-0a1c9d2f6b11', how: 'Reset' }, 'faultId'],
    ['of a fault nobody knows', { faultKey: '7d3f0a52-8a6e-4b53-9b1c-0a1c9d2f6b11', how: 'Reset' }, 'faultKey'],
  ])('a closing %s is refused', async (_what, asked, path) => {
    const { actor, setId } = await failed();
    const filled = JSON.parse(JSON.stringify(asked).replace('SET', setId));
    expect(await closeFault(actor, filled)).toMatchObject({ outcome: 'refused', problems: [{ path }] });
  });

  test('S26 of another site is neither seen, closed nor photographed', async () => {
    const { faultId, setId } = await failed();
    const stranger = await someone('administrator');
    expect(await faultById(stranger, faultId)).toBeNull();
    expect(await faults(stranger, EVERY)).toMatchObject({ open: [], closed: [] });
    expect(await closeFault(stranger, { faultId, how: 'Mine' })).toMatchObject({ outcome: 'refused' });
    expect(await closeFault(stranger, { setId, how: 'Mine' })).toMatchObject({ outcome: 'refused' });
    const picture = { of: { thing: 'fault', id: faultId }, caption: null, bytes: await jpeg({ seed: 3 }) } as const;
    expect(await keepPicture(stranger, picture)).toEqual({ outcome: 'refused', why: 'unknown' });
  });

  test('its photograph is the fault’s and the set’s', async () => {
    const { actor, faultId, setId } = await failed();
    const done = await keepPicture(actor, {
      ...{ of: { thing: 'fault', id: faultId }, caption: null },
      ...{ bytes: await jpeg({ seed: 4 }) },
    });
    expect(done.outcome).toBe('saved');
    for (const of of [
      { thing: 'fault', id: faultId },
      { thing: 'set', id: setId },
    ] as const)
      expect(await picturesOf(actor, of)).toHaveLength(1);
  });
});

describe('a fault told without a network', () => {
  const sent = (body: object, key: string = randomUUID()) => ({ version: 2 as const, key, body });

  test('R2 R5 is noted once for its key, and closed by that key, however often both are sent', async () => {
    const { actor, sets } = await smallPlant();
    const key = randomUUID();
    const body = { setId: got(sets, 'P-101'), seen: ['hot'], says: null, seenAt: '2026-11-28T02:00:00Z' };
    const first = await CARRIERS.fault.carryOut(actor, sent(body, key));
    expect(first).toMatchObject({ outcome: 'saved', isRepeat: false });
    expect(await CARRIERS.fault.carryOut(actor, sent(body, key))).toEqual({ ...first, isRepeat: true });
    const closing = { faultId: null, faultKey: key, how: 'Cleaned the fins', doneAt: null };
    const done = await CARRIERS['fault-closed'].carryOut(actor, sent(closing));
    expect(done).toMatchObject({ outcome: 'saved', isRepeat: false });
    expect(await CARRIERS['fault-closed'].carryOut(actor, sent(closing))).toEqual({ ...done, isRepeat: true });
    expect((await faults(actor, EVERY)).closed).toMatchObject([{ closedHow: 'Cleaned the fins' }]);
  });

  test('S1 an unknown key of its body, or nothing told, is refused by where it stands', async () => {
    const { actor, sets } = await smallPlant();
    const body = { setId: got(sets, 'P-101'), seen: [], says: null, seenAt: null };
    expect(await CARRIERS.fault.carryOut(actor, sent(body))).toMatchObject({ problems: [{ path: 'body.seen' }] });
    expect(await CARRIERS.fault.carryOut(actor, sent({ ...body, who: 'me' }))).toMatchObject({ outcome: 'refused' });
    const closing = { faultId: null, faultKey: randomUUID(), how: 'Reset', doneAt: null };
    expect(await CARRIERS['fault-closed'].carryOut(actor, sent(closing))).toMatchObject({
      problems: [{ path: 'body.faultKey' }],
    });
  });
});

describe('the list of faults', () => {
  /** Faults that began and ended so many minutes ago; null: not ended. */
  async function stood(times: [began: number, ended: number | null][]) {
    const { actor, sets } = await smallPlant();
    const area = await db.area.create({ data: { siteId: actor.siteId, name: 'Syrup' } });
    const setId = got(sets, 'P-101');
    await db.pumpSet.update({ where: { siteId_id: { siteId: actor.siteId, id: setId } }, data: { areaId: area.id } });
    const ago = (minutes: number) => new Date(Date.now() - minutes * 60_000);
    for (const [began, ended] of times)
      await db.fault.create({
        data: {
          ...{ siteId: actor.siteId, setId, byId: actor.userId, seen: ['trip'], at: ago(began) },
          closedAt: ended === null ? null : ago(ended),
        },
      });
    return { actor, areaId: area.id };
  }

  test('has the longest standing first, then what was closed last', async () => {
    const { actor } = await stood([
      [10, null],
      [50, null],
      [500, 400],
      [300, 200],
      [100 * 1440, 60 * 1440],
    ]);
    const { open, closed, allOpen, allClosed } = await faults(actor, EVERY);
    const minutes = ({ at }: { at: Date }) => Math.round((Date.now() - at.getTime()) / 60_000);
    expect(open.map(minutes)).toEqual([50, 10]);
    expect(closed.map(minutes)).toEqual([300, 500]);
    expect([allOpen, allClosed]).toEqual([2, 2]);
    expect((await faults(actor, { ...EVERY, days: 90 })).closed).toHaveLength(3);
  });

  test('tells the median and the longest of each area, over the closed alone', async () => {
    // Minutes stood: 10, 20, 90. Half of them were over in 20; the mean would be 40.
    const { actor, areaId } = await stood([
      [100, 90],
      [200, 180],
      [390, 300],
      [900, null],
    ]);
    const [times, ...more] = await faultTimes(actor, { areaId, days: 30 });
    expect(more).toEqual([]);
    expect(times).toMatchObject({ area: 'Syrup', count: 3 });
    expect(times?.medianMs).toBeCloseTo(20 * 60_000, -3);
    expect(times?.longestMs).toBeCloseTo(90 * 60_000, -3);
    expect(await faultTimes(actor, { areaId: randomUUID(), days: 30 })).toEqual([]);
  });

  test('goes out as a file, which the audit tells', async () => {
    const { actor } = await stood([
      [100, 90],
      [20, null],
    ]);
    expect(await exportFaults(actor, EVERY)).toHaveLength(2);
    const entry = await db.auditEntry.findFirst({ where: { siteId: actor.siteId, action: 'register.export' } });
    expect(entry?.after).toMatchObject({ kind: 'faults', rows: 2 });
    await expect(exportFaults({ ...actor, role: 'technician' }, EVERY)).rejects.toThrow('Not allowed');
  });
});
