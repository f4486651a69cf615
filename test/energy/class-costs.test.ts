import { expect, test } from 'vitest';
import { classCosts } from '@/lib/energy/class-costs';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { motor, set } from '../matching/easy';

const site: SiteSettings = { ...defaultSettings, pricePerKwh: 0.12, currency: 'EUR', hoursPerYear: 6_000 };
const here = motor({
  ...{ id: 'M-0', frame: '132M', mounting: 'IM B3' },
  ratings: [{ volts: 400, hertz: 50, kw: 7.5, rpm: 1450, amps: 15, pf: 0.84, efficiencyPct: 87 }],
});
const asked = set({ failed: here, supply: { volts: 400, hertz: 50 } });
const cost = (loadPct: number, ieClass: string, settings = site, of = here) =>
  classCosts({ ...asked, failed: of }, of, settings, null)
    .find((one) => one.loadPct === loadPct)
    ?.classes.find((one) => one.ieClass === ieClass);

// IEC 60034-30-1, 50 Hz, 7.5 kW, 4 poles: 86.0, 88.7, 90.4, 92.6 % (IE1 and IE3 read in two texts). DOE load fact sheet,
// Figure 1: at full load the ratio is 1.
test.each([
  ['IE1', 86],
  ['IE2', 88.7],
  ['IE3', 90.4],
  ['IE4', 92.6],
])('%s at full load takes the rated power over its nominal %f %%', (ieClass, pct) => {
  const full = cost(100, ieClass);
  expect(full?.efficiencyPct.value).toBeCloseTo(pct, 9);
  expect(full?.kwhPerYear.value).toBeCloseTo((7.5 / (pct / 100)) * 6_000, 6); // P_in = P_out / η; energy = P_in × hours
  expect(full?.moneyPerYear.value).toBeCloseTo((7.5 / (pct / 100)) * 6_000 * 0.12, 6);
});

// DOE load fact sheet, Figure 1, as read in one text: about 7.5 kW the ratio falls between 0.753 at 20 % and 0.887 at 30 %,
// and at 15 kW between 0.843 and 0.937; at 60 % and above it is 1.
test('at a quarter of its load a motor is worse than printed, at three quarters it is not', () => {
  const quarter = cost(25, 'IE3')?.efficiencyPct.value ?? Number.NaN;
  expect(quarter / 90.4).toBeGreaterThan((0.753 + 0.887) / 2);
  expect(quarter / 90.4).toBeLessThan((0.843 + 0.937) / 2);
  expect(cost(75, 'IE3')?.efficiencyPct.value).toBeCloseTo(90.4, 9);
});

test('a load besides the usual ones stands among them in order', () => {
  expect(classCosts(asked, here, site, 40).map(({ loadPct }) => loadPct)).toEqual([25, 40, 50, 75, 100]);
});

test.each<[string, Partial<SiteSettings>, Partial<typeof here>]>([
  ['hours', { hoursPerYear: null }, {}],
  ['poles', {}, { poles: null }],
])('without %s no energy is told, and why is', (_, differs, plate) => {
  const none = cost(100, 'IE3', { ...site, ...differs }, { ...here, ...plate })?.kwhPerYear;
  expect(none?.value).toBeNull();
  expect(none).toHaveProperty('why', expect.stringMatching(/\w{4}/));
});

test('without a price the energy stands and its cost does not', () => {
  const one = cost(100, 'IE3', { ...site, pricePerKwh: null });
  expect(one?.kwhPerYear.value).not.toBeNull();
  expect(one?.moneyPerYear.value).toBeNull();
});

test('the duty’s own load stands among the usual ones, and once where it is one of them', () => {
  const loads = (atPct: number | null) => classCosts(asked, here, site, atPct).map(({ loadPct }) => loadPct);
  expect(loads(null)).toEqual([25, 50, 75, 100]);
  expect(loads(88.42)).toEqual([25, 50, 75, 88.42, 100]);
  expect(loads(75)).toEqual([25, 50, 75, 100]);
  expect(loads(74.98)).toEqual([25, 50, 75, 100]);
});
