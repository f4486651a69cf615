import { beforeAll, describe, expect, test } from 'vitest';
import { monthAsked } from '@/app/reports/month';
import { monthRows } from '@/app/reports/month-rows';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { exportMonth } from '@/lib/register/commands/export-month';
import { monthReport, type Span } from '@/lib/register/queries/month-report';
import { reviewMonth } from '@/lib/register/queries/review-month';
import { got, smallPlant, someone } from './plant';

/** Sites of these tests stand in Copenhagen: in March 2026 their clocks go forward on the 29th, at 01:00 UTC. */
const MARCH: Span = { from: new Date('2026-02-28T23:00:00Z'), to: new Date('2026-03-31T22:00:00Z') };
const month = { span: MARCH, days: { from: '2026-03-01', to: '2026-04-01' } };
const LATER = '2026-05-01';
const at = (text: string) => new Date(text);

let actor: Actor;
let plant: Awaited<ReturnType<typeof smallPlant>>;
beforeAll(async () => {
  plant = await smallPlant();
  actor = plant.actor;
  const [one, other] = [got(plant.sets, 'P-101'), got(plant.sets, 'P-102')];
  const fault = (setId: string, began: string, ended: string | null) =>
    db.fault.create({
      data: {
        ...{ siteId: actor.siteId, setId, byId: actor.userId, at: at(began), seen: ['trip'] },
        ...(ended !== null && { closedAt: at(ended), closedBy: 'repair', closedById: actor.userId, closedHow: 'Fuse' }),
      },
    });
  await fault(one, '2026-02-28T22:59:59Z', '2026-02-28T23:59:59Z'); // began the month before, ended in it: 1 h
  await fault(one, '2026-02-28T23:00:00Z', '2026-03-01T01:00:00Z'); // the first moment of it: 2 h
  await fault(other, '2026-03-10T10:00:00Z', '2026-03-10T19:00:00Z'); // 9 h
  await fault(other, '2026-03-31T21:59:59Z', '2026-04-01T03:00:00Z'); // its last second, ended after
  await fault(one, '2026-03-31T22:00:00Z', null); // the next month
  const motorId = got(plant.motors, 'M-7');
  const repair = (began: string, ended: string | null) =>
    db.repair.create({
      data: {
        ...{ siteId: actor.siteId, motorId, byId: actor.userId, at: at(began), reason: 'Bearing' },
        ...(ended !== null && {
          endedAt: at(ended),
          decision: 'repair',
          decidedById: actor.userId,
          decidedAt: at(ended),
        }),
      },
    });
  await repair('2026-01-05T08:00:00Z', '2026-03-05T08:00:00Z');
  await repair('2026-03-06T08:00:00Z', '2026-04-05T08:00:00Z');
  const stands = {
    sets: 2,
    open: 3,
    accepted: 1,
    opened: 2,
    closed: 1,
    kwh: 900n,
    moneyHundredths: 12_650n,
    unpriced: 1,
  };
  const days = ['2026-02-26', '2026-02-27', '2026-03-05', '2026-04-01'].map((day) => new Date(day));
  await db.reviewDay.createMany({ data: days.map((day) => ({ siteId: actor.siteId, day, ...stands })) });
});

describe('a month', () => {
  test('has the faults that began in it, from its first moment to its last', async () => {
    const { faults, allFaults, openAtEnd } = await monthReport(actor, MARCH);
    expect(faults.map(({ at }) => at.toISOString())).toEqual([
      '2026-02-28T23:00:00.000Z',
      '2026-03-10T10:00:00.000Z',
      '2026-03-31T21:59:59.000Z',
    ]);
    expect(allFaults).toBe(3);
    expect(openAtEnd).toBe(1);
  });

  test('has the times of those that ended in it: of 1, 2 and 9 hours the middle one is 2', async () => {
    const { times, byArea } = await monthReport(actor, MARCH);
    expect(times).toEqual({ count: 3, medianMs: 2 * 3_600_000, longestMs: 9 * 3_600_000 });
    expect(byArea.reduce((sum, { count }) => sum + count, 0)).toBe(3);
  });

  test('has the repairs that ended in it, whenever they began', async () => {
    const { repairs, allRepairs } = await monthReport(actor, MARCH);
    expect(repairs).toMatchObject([{ motor: 'M-7', reason: 'Bearing', decision: 'repair', setTag: null }]);
    expect(allRepairs).toBe(1);
  });

  test('in which nothing happened says so in figures', async () => {
    const quiet = { from: at('2020-01-01T00:00:00Z'), to: at('2020-02-01T00:00:00Z') };
    expect(await monthReport(actor, quiet)).toEqual({
      ...{ faults: [], allFaults: 0, openAtEnd: 0, times: null, byArea: [] },
      ...{ swaps: [], allSwaps: 0, repairs: [], allRepairs: 0 },
    });
  });

  test('shows no more than is asked for, and counts them all', async () => {
    const { faults, allFaults } = await monthReport(actor, MARCH, 1);
    expect([faults.length, allFaults]).toEqual([1, 3]);
  });

  test('of another site has nothing of this one', async () => {
    expect(await monthReport(await someone(), MARCH)).toMatchObject({ allFaults: 0, openAtEnd: 0, times: null });
    expect(await reviewMonth(await someone(), month.days, LATER)).toMatchObject({ days: [], before: null });
  });

  test('has the days of the review that are kept of it, and which day came before', async () => {
    expect(await reviewMonth(actor, month.days, LATER)).toEqual({
      days: [
        {
          ...{ day: '2026-03-05', open: 3, accepted: 1, opened: 2, closed: 1 },
          ...{ kwh: 900, moneyHundredths: 12_650, unpriced: 1 },
        },
      ],
      before: '2026-02-27',
      missing: [
        { first: '2026-03-01', last: '2026-03-04' },
        { first: '2026-03-06', last: '2026-03-31' },
      ],
      ...{ opened: 2, closed: 1, untold: 0 },
    });
    await expect(reviewMonth({ ...actor, role: 'technician' }, month.days, LATER)).rejects.toThrow('review.read');
  });

  test('as a file has each kept day of the review in a row, and each stretch that is not kept', async () => {
    const [head, ...rows] = monthRows(await exportMonth(actor, month, LATER));
    const told = rows.map((row) => Object.fromEntries((head ?? []).map((name, i) => [name, row[i]])));
    expect(told.map(({ What }) => What)).toEqual([
      ...['fault', 'fault', 'fault', 'repair', 'review', 'review not kept', 'review not kept'],
    ]);
    expect(told[4]).toMatchObject({
      ...{ Set: null, Day: '2026-03-05', 'Findings open': 3, 'Findings accepted': 1, 'Findings opened': 2 },
      ...{ 'Findings closed': 1, 'kWh a year': 900, 'Money a year': 126.5, 'Money not known': 1 },
    });
    expect(told[6]).toMatchObject({ Day: '2026-03-06', 'To day': '2026-03-31', 'Findings open': null });
    expect(rows.every((row) => row.length === head?.length)).toBe(true);
  });

  test('R9 goes out only to those who may take things out, and the audit says so', async () => {
    await expect(exportMonth({ ...actor, role: 'technician' }, month, LATER)).rejects.toThrow('register.export');
    await exportMonth(actor, month, LATER);
    const where = { siteId: actor.siteId, action: 'register.export' };
    const entry = await db.auditEntry.findFirst({ where, orderBy: { at: 'desc' } });
    expect(entry?.after).toEqual({ kind: 'month', rows: 7 }); // 3 faults, a repair, a day of the review, two stretches without
  });
});

describe('a month as an address names it', () => {
  test('begins and ends where the site is, also when its clocks change in it', () => {
    expect(monthAsked('2026-03', 'Europe/Copenhagen')).toMatchObject({
      before: '2026-02',
      after: '2026-04',
      span: MARCH,
    });
    expect(monthAsked('2026-12', 'Europe/Copenhagen')).toMatchObject({ before: '2026-11', after: '2027-01' });
  });

  test.each(['2026-13', '2026-00', '2026-3', '26-03', '0001-01', '', 'soon'])('%s is none', (text) => {
    expect(monthAsked(text, 'UTC')).toBeNull();
  });

  test('now is the month that runs, and one to come says so', () => {
    expect(monthAsked('now', 'UTC')).toMatchObject({ isNow: true, isToCome: false });
    expect(monthAsked('2999-01', 'UTC')).toMatchObject({ isNow: false, isToCome: true });
  });
});
