import { describe, expect, test } from 'vitest';
import { type Alternatives, nextFailure } from '@/lib/energy/next-failure/next-failure';
import { buyable } from '@/lib/matching/buy/buyable';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { motor, set } from '../matching/easy';

const site: SiteSettings = {
  ...defaultSettings,
  ...{ pricePerKwh: 0.12, currency: 'EUR', hoursPerYear: 6_000, workPerHour: 60, lifeYears: 10 },
  ...{ discountRatePct: 8, energyPriceGrowthPct: 2, downtimePerHour: { 1: 1_000, 2: null, 3: null, 4: null } },
};
/** 7.5 kW, 4 poles, 50 Hz, 87 %: stands between IE1 and IE2 (IE2 88.7, IE3 90.4, IE4 92.6 by IEC 60034-30-1). */
const here = motor({
  ...{ id: 'M-0', frame: '132M', mounting: 'IM B3' },
  ratings: [{ volts: 400, hertz: 50, kw: 7.5, rpm: 1450, amps: 15, pf: 0.84, efficiencyPct: 87 }],
});
const asked = set({
  ...{ failed: here, supply: { volts: 400, hertz: 50 } },
  load: { kind: 'quadratic', shaftKw: 6, atPumpRpm: 1460 },
});
const toBuy = buyable(asked)
  .filter(({ ratings }) => ratings[0]?.kw === 7.5)
  .map((one) => ({ motor: one, hours: 3, prices: { IE3: 900 } }));
const alternatives: Alternatives = {
  onShelf: [{ motor: { ...here, id: 'M-7' }, hours: 2.5, price: null }],
  toBuy,
  repairPrice: 400,
};
const rows = (settings = site, criticality: number | null = 1, which = alternatives) =>
  nextFailure(asked, here, which, settings, criticality).rows;
const bought = (ieClass: string, of = rows()) => {
  const row = of.find((one) => one.ieClass === ieClass);
  if (row === undefined) throw new Error(`No row of ${ieClass}`);
  return row;
};

test('tonight with the shelf, at the next failure in each class, after a repair', () => {
  expect(rows().map(({ moment, ieClass }) => [moment, ieClass])).toEqual([
    ['tonight', null],
    ['next-failure', 'IE2'],
    ['next-failure', 'IE3'],
    ['next-failure', 'IE4'],
    ['after-repair', null],
  ]);
});

// IEC 60034-30-1 at 50 Hz, 7.5 kW, 4 poles.
test.each([
  ['IE2', 88.7],
  ['IE3', 90.4],
  ['IE4', 92.6],
])('a bought motor of %s has %f %% at full load', (ieClass, pct) => {
  expect(bought(ieClass).ratedEfficiencyPct).toMatchObject({ low: pct, high: pct });
});

test('a bought motor’s efficiency rests on its class, not on a plate that nobody has seen', () => {
  const { ratedEfficiencyPct } = bought('IE3');
  if (ratedEfficiencyPct.low === null) throw new Error(ratedEfficiencyPct.why);
  expect(ratedEfficiencyPct.from).toMatch(/^nominal of IE3: .*60034-30-1/);
});

test('the better the class, the less it takes in a year', () => {
  const kwh = ['IE2', 'IE3', 'IE4'].map((ieClass) => bought(ieClass).kwhPerYear.low ?? Number.NaN);
  expect(kwh).toEqual([...kwh].sort((a, b) => b - a));
  expect(kwh[0]).toBeLessThan(rows()[0]?.kwhPerYear.low ?? 0);
});

// EASA/AEMT studies in the trade press: 2003 within 0.2 points, 2020 from −0.5 to +0.3.
test('after a repair the efficiency lies from half a point below to 0.3 above', () => {
  const row = rows().at(-1);
  expect(row?.ratedEfficiencyPct).toMatchObject({ low: expect.closeTo(86.5, 9), high: expect.closeTo(87.3, 9) });
  expect(row?.kwhPerYear.high ?? 0).toBeGreaterThan(row?.kwhPerYear.low ?? Number.NaN);
});

describe('hours down', () => {
  const day = 24;

  test('tonight are the hours of the swap', () => {
    expect(rows()[0]?.hoursDown).toMatchObject({ low: 2.5, high: 2.5 });
  });

  // Common practice: a distributor has a common frame in up to 5 days, else 1 to 4 weeks.
  test('with a bought standard motor from at once to four weeks, and the swap', () => {
    expect(bought('IE3').hoursDown).toMatchObject({ low: 3, high: 28 * day + 3 });
  });

  test('the site’s own days stand in their place', () => {
    expect(bought('IE3', rows({ ...site, deliveryDays: 10 })).hoursDown).toMatchObject({ low: 243, high: 243 });
  });

  // Common practice: hazardous-area 6 to 20 weeks, stainless washdown 3 to 12.
  test.each([
    ['an area mark', { classification: { scheme: 'IEC', zone: 2, group: 'IIB', tempC: null } as const }, 42, 140],
    ['washdown', { washdown: 'stainless' as const }, 21, 84],
  ])('made to order for %s', (_, differs, from, to) => {
    const [one] = toBuy;
    if (one === undefined) throw new Error('There is one to buy.');
    const special = { ...alternatives, toBuy: [{ ...one, motor: { ...one.motor, ...differs } }] };
    const { hoursDown } = bought('IE3', rows(site, 1, special));
    expect(hoursDown).toMatchObject({ low: from * day + 3, high: to * day + 3 });
    expect(bought('IE3', rows({ ...site, deliveryDays: 1 }, 1, special)).hoursDown).toMatchObject({
      low: from * day + 3,
    });
  });

  // A supplier's article: a rewind up to 10 hp takes 3 to 7 working days, 15 to 100 hp 1 to 2 weeks, from 150 hp 2 to 4.
  test.each([
    [7.5, 3 * 1.4, 7 * 1.4],
    [9, 7, 14],
    [75, 7, 14],
    [90, 14, 28],
    [132, 14, 28],
  ])('a rewind of %f kW is away from %f to %f days', (kw, from, to) => {
    const rated = motor({ ratings: [{ volts: 400, hertz: 50, kw, rpm: 1450, amps: 15 }] });
    const row = nextFailure(asked, rated, { onShelf: [], toBuy: [], repairPrice: null }, site, 1).rows.at(-1);
    expect(row?.hoursDown.low).toBeCloseTo(from * day + site.hours.swap, 9);
    expect(row?.hoursDown.high).toBeCloseTo(to * day + site.hours.swap, 9);
  });
});

describe('life-cycle cost', () => {
  test('of a bought motor holds price, work, downtime and energy', () => {
    const { low, high } = bought('IE3').lifeCycle;
    expect(low).toMatchObject({ purchase: { value: 900 }, work: { value: 180 }, downtime: { value: 3_000 } });
    expect(high.downtime.value).toBe((28 * 24 + 3) * 1_000);
    expect(low.total.value).toBeCloseTo(900 + 180 + 3_000 + (low.energy.value ?? Number.NaN), 6);
  });

  test.each<[string, SiteSettings, number | null, RegExp]>([
    ['nobody said how critical the set is', site, null, /hour down/],
    ['the site told no cost of downtime for it', site, 2, /hour down/],
    ['no discount rate is told', { ...site, discountRatePct: null }, 1, /Discount/],
  ])('is not told where %s', (_, settings, criticality, why) => {
    expect(bought('IE3', rows(settings, criticality)).lifeCycle.low.total).toMatchObject({
      value: null,
      why: expect.stringMatching(why),
    });
  });

  test('a class without a price has none', () => {
    expect(bought('IE4').lifeCycle.low.total.value).toBeNull();
  });
});

// Pumps & Systems: power with the cube of speed, so one rpm of 1450 takes 3/1450 of it.
test('each rpm faster is told in kW', () => {
  const { kwPerRpm } = bought('IE3');
  expect(kwPerRpm.value).toBeCloseTo((3 * 6) / 1460, 3);
});

test('at 60 Hz no table of IE4 is at hand, and the row says so', () => {
  const us = set({ load: { kind: 'quadratic' } });
  const offers = buyable(us).map((one) => ({ motor: one, hours: 2, prices: {} }));
  const failure = nextFailure(us, motor(), { onShelf: [], toBuy: offers.slice(0, 1), repairPrice: null }, site, 1);
  const ie4 = failure.rows.find(({ ieClass }) => ieClass === 'IE4');
  expect(ie4?.kwhPerYear).toMatchObject({ low: null, why: expect.stringContaining('IE4 at 60 Hz') });
});

test('a motor of which no load is known has no energy in any row, and each says why', () => {
  const blind = set({ failed: here, supply: { volts: 400, hertz: 50 }, load: { shaftKw: null } });
  for (const row of nextFailure(blind, here, alternatives, site, 1).rows)
    expect(row.kwhPerYear, row.moment).toMatchObject({ low: null, why: expect.stringMatching(/\S/) });
});
