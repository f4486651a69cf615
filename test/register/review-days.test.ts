import { beforeEach, describe, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { acceptFinding } from '@/lib/register/commands/accept-finding';
import { changeThings } from '@/lib/register/commands/change-things';
import { review } from '@/lib/register/queries/review';
import { reviewCharts } from '@/lib/register/queries/review-charts';
import { keepReviewDay, keepReviewDays } from '@/lib/register/review/keep-review-day';
import { today } from '@/lib/register/today';
import { ALL_OPEN } from '@/lib/review/list/review-filter';
import { colleague, got, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
beforeEach(async () => {
  here = await smallPlant();
});

const load = (tag: string, shaftKw: number) =>
  changeThings(here.actor, [
    {
      ...{ thing: 'set', id: got(here.sets, tag), version: null },
      edit: { 'coupling.type': 'coupling', 'load.atPumpRpm': 1750, 'load.shaftKw': shaftKw },
    },
  ]);

test('a day is kept once, as it stood last: open and accepted apart', async () => {
  await load('P-101', 1);
  await keepReviewDay(here.actor.siteId);
  await load('P-102', 4.8);
  await keepReviewDay(here.actor.siteId);
  const day = today('Europe/Copenhagen');
  expect((await reviewCharts(here.actor)).days).toMatchObject([{ day, open: 2, accepted: 0 }]);
  const { rows } = await review(here.actor, { filter: ALL_OPEN, today: day }, { page: 1, perPage: 9 });
  for (const { setId, finding } of rows.slice(0, 1))
    await acceptFinding(
      here.actor,
      { setId, rule: finding.rule, figures: finding.figures, reason: 'Seen', againOn: '2099-01-01' },
      day,
    );
  await keepReviewDay(here.actor.siteId);
  expect((await reviewCharts(here.actor)).days).toMatchObject([{ day, open: 1, accepted: 1 }]);
});

test('days stand in their order, and every site with a set has its own', async () => {
  const key = { siteId: here.actor.siteId, day: new Date('2026-01-05') };
  const counts = { sets: 2, open: 4, accepted: 1, kwh: 900n, moneyHundredths: 123_456n, unpriced: 0 };
  await db.reviewDay.create({ data: { ...key, ...counts } });
  await keepReviewDays(new AbortController().signal);
  const { days } = await reviewCharts(here.actor);
  expect(days[0]).toEqual({ day: '2026-01-05', open: 4, accepted: 1, moneyHundredths: 123_456 });
  expect(days).toHaveLength(2);
});

describe('what opened and what closed', () => {
  const keys = (...tags: string[]) => tags.map((tag) => `oversized ${got(here.sets, tag)}`);
  const keptBefore = (day: string, open: number, stood: string[]) => {
    const counts = { sets: 2, open, accepted: 0, kwh: 0n, moneyHundredths: 0n, unpriced: 0 };
    return db.reviewDay.create({ data: { siteId: here.actor.siteId, day: new Date(day), ...counts, stood } });
  };
  const keptToday = async () => {
    await keepReviewDay(here.actor.siteId);
    return db.reviewDay.findFirstOrThrow({ where: { siteId: here.actor.siteId }, orderBy: { day: 'desc' } });
  };

  test('is counted against the day kept before, however long ago, and anew each hour', async () => {
    await keptBefore('2026-01-05', 1, keys('P-102'));
    await load('P-101', 1); // oversized
    expect(await keptToday()).toMatchObject({ open: 1, opened: 1, closed: 1, stood: keys('P-101') });
    await load('P-102', 1);
    expect(await keptToday()).toMatchObject({ open: 2, opened: 1, closed: 0 });
    await load('P-101', 3.1);
    expect(await keptToday()).toMatchObject({ open: 1, opened: 0, closed: 0, stood: keys('P-102') });
  });

  test('what stands more than the day before is what opened less what closed, and accepting changes neither', async () => {
    await keptBefore('2026-01-05', 1, keys('P-102'));
    await load('P-101', 1);
    await load('P-102', 4.8); // no more oversized, but overloaded and what comes of it
    const day = today('Europe/Copenhagen');
    const { rows } = await review(here.actor, { filter: ALL_OPEN, today: day }, { page: 1, perPage: 9 });
    const before = await keptToday();
    for (const { setId, finding } of rows.slice(0, 1)) {
      const told = { setId, rule: finding.rule, figures: finding.figures, reason: 'Seen', againOn: '2099-01-01' };
      expect(await acceptFinding(here.actor, told, day)).toMatchObject({ outcome: 'saved' });
    }
    const { open, accepted, opened, closed } = await keptToday();
    expect(open + accepted - 1).toBe((opened ?? Number.NaN) - (closed ?? Number.NaN));
    expect([accepted, opened, closed]).toEqual([1, before.opened, before.closed]);
    expect(closed).toBe(1);
  });

  test('is not known of the first day, nor after a day of which it is not kept what stood', async () => {
    await load('P-101', 1);
    expect(await keptToday()).toMatchObject({ open: 1, opened: null, closed: null });
    await keptBefore('2026-01-05', 4, []);
    expect(await keptToday()).toMatchObject({ open: 1, opened: null, closed: null });
  });

  test('is known after a day on which nothing stood', async () => {
    await keptBefore('2026-01-05', 0, []);
    await load('P-101', 1);
    expect(await keptToday()).toMatchObject({ opened: 1, closed: 0 });
  });

  test('which findings stood is forgotten once it is asked no more', async () => {
    await keptBefore('2026-01-04', 2, keys('P-101', 'P-102'));
    await keptBefore('2026-01-05', 1, keys('P-102'));
    await keptToday();
    const rows = await db.reviewDay.findMany({ where: { siteId: here.actor.siteId }, orderBy: { day: 'asc' } });
    expect(rows.map(({ stood }) => stood.length)).toEqual([0, 1, 0]);
    expect(rows.map(({ open }) => open)).toEqual([2, 1, 0]);
  });

  test('the database takes no other number of findings than stood, and not one figure without the other', async () => {
    await expect(keptBefore('2026-01-05', 3, keys('P-101'))).rejects.toThrow('review_day_stood');
    const counts = { sets: 2, open: 0, accepted: 0, kwh: 0n, moneyHundredths: 0n, unpriced: 0, opened: 1 };
    await expect(
      db.reviewDay.create({ data: { siteId: here.actor.siteId, day: new Date('2026-01-05'), ...counts } }),
    ).rejects.toThrow('review_day_changes');
  });
});

test('loads and losses are those of the sets as they stand', async () => {
  await load('P-101', 1); // 27 % of 5 hp
  const { loads, losses } = await reviewCharts(here.actor);
  expect(loads.bins.find(({ fromPct }) => fromPct === 20)?.sets).toBe(1);
  expect(loads.unknown).toBe(1);
  expect(losses).toMatchObject([{ area: null, known: expect.any(Number), unknown: expect.any(Number) }]);
  expect((losses[0]?.known ?? 0) + (losses[0]?.unknown ?? 0)).toBe(2);
});

test('technicians may not see it', async () => {
  const technician = await colleague(here.actor.siteId, 'technician', 'Per Ost');
  await expect(reviewCharts(technician)).rejects.toThrow('review.read');
});
