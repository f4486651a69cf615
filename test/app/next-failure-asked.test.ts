import { describe, expect, test } from 'vitest';
import { assumed } from '@/app/sets/[tag]/next/assumptions';
import { missingOf } from '@/app/sets/[tag]/next/missing';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { easySet } from '../matching/buy/easy-set';

const site: SiteSettings = {
  ...defaultSettings,
  ...{ pricePerKwh: 0.12, currency: 'EUR', hoursPerYear: 6_000, lifeYears: 10, workPerHour: 60 },
  ...{ discountRatePct: 8, energyPriceGrowthPct: null, downtimePerHour: { 1: 1_000, 2: 50, 3: null, 4: null } },
};
const of = (name: string, query: Record<string, string>, criticality: 1 | 2 | 3 | null = 1) => {
  const found = assumed(query, site, criticality).assumptions.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no figure ${name}`);
  return found;
};

describe('a figure that the sums rest on', () => {
  test.each<[string, string, Record<string, string>, object]>([
    ['is the site’s where the address tells none', 'price', {}, { value: 0.12, from: 'site', error: null }],
    ['is the address’s where it tells one', 'price', { price: '0,2' }, { value: 0.2, from: 'address' }],
    ['is nobody’s where neither does', 'growth', {}, { value: null, from: 'nobody' }],
    ['may fall', 'growth', { growth: '-1.5' }, { value: -1.5, from: 'address' }],
    [
      'stays the site’s where the address tells no figure, and says so',
      'hours',
      { hours: 'all' },
      { value: 6_000, from: 'site', error: expect.stringContaining('all') },
    ],
    [
      'is not taken beyond what it can be',
      'hours',
      { hours: '9000' },
      { value: 6_000, error: expect.stringContaining('8784') },
    ],
    [
      'is whole where it counts years',
      'years',
      { years: '7.5' },
      { value: 10, error: expect.stringContaining('whole') },
    ],
    ['is typed where no site keeps it', 'repair', { repair: '400' }, { value: 400, from: 'address' }],
  ])('%s', (_, name, query, asked) => {
    expect(of(name, query)).toMatchObject(asked);
  });

  test('an hour down costs what the site says of that criticality; without one nothing is known', () => {
    expect(of('down', {}, 2)).toMatchObject({ value: 50, from: 'site' });
    expect(of('down', {}, 3)).toMatchObject({ value: null, from: 'nobody' });
    expect(of('down', {}, null)).toMatchObject({ value: null, from: 'nobody' });
    expect(assumed({ down: '7' }, site, null).settings.downtimePerHour[1]).toBe(7);
  });

  test('what is typed goes into the sums, and the site’s settings are not changed', () => {
    const { settings, prices } = assumed({ hours: '100', ie3: '900' }, site, 1);
    expect(settings.hoursPerYear).toBe(100);
    expect(prices).toEqual({ IE3: 900 });
    expect(site.hoursPerYear).toBe(6_000);
  });
});

describe('what is missing is told with where it is entered', () => {
  const whatOf = (one: ReturnType<typeof easySet>, criticality: number | null, query: Record<string, string> = {}) => {
    const told = assumed(query, site, criticality === null ? null : 1);
    return missingOf(one, one.tag, criticality, told.settings, told.assumptions, true);
  };
  const everything = { growth: '2', shelf: '0', ie2: '1', ie3: '1', ie4: '1', repair: '1' };
  const withEfficiency = { ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, efficiencyPct: 89.5 }] };

  test('nothing where everything is told', () => {
    expect(whatOf(easySet({}, withEfficiency), 1, everything)).toEqual([]);
  });

  test.each<[string, ReturnType<typeof easySet>, number | null, string]>([
    ['the load', easySet({ load: { kind: 'constant-torque', atPumpRpm: 1750 } }, withEfficiency), 1, '/sets/P-1/edit'],
    ['its kind', easySet({ load: { shaftKw: 3, atPumpRpm: 1750 } }, withEfficiency), 1, '/sets/P-1/edit'],
    ['the criticality', easySet({}, withEfficiency), null, '/sets/P-1/edit'],
    ['the efficiency', easySet(), 1, '/motors/M-1/edit'],
    ['the plate’s row', easySet({}, { ratings: [] }), 1, '/motors/M-1/edit'],
  ])('%s', (_, one, criticality, href) => {
    expect(whatOf(one, criticality, { ...everything, down: '1' }).map((missing) => missing.href)).toContain(href);
  });

  test('a figure of the site leads to its settings, one of this page to none', () => {
    const missing = whatOf(easySet({}, withEfficiency), 1, { ...everything, growth: '', repair: '' });
    expect(missing.map(({ href }) => href)).toEqual(['/site', null]);
  });
});
