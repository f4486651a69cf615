import { expect, test } from 'vitest';
import { efficiencyClass } from '@/lib/matching/criteria/load/efficiency-class';
import { motor, set } from '../easy';
import { asked } from './asked';

const plate = (efficiencyPct: number | null, rpm = 1750) => [
  { volts: 460, hertz: 60, hp: 5, rpm, amps: 6.6, efficiencyPct },
];
const failed = (efficiencyPct: number | null) => ({
  id: 'M-0',
  poles: 4,
  phases: 3 as const,
  ratings: plate(efficiencyPct),
});
const site = { hoursPerYear: 6000, pricePerKwh: 0.15, currency: 'EUR' };

// Both at 83.5 % of 5 hp, where a 2.5 kW motor's printed part-load ratio is 1: 3.1149 kW at the shaft.
test.each([
  // 3.1149·(1/0.895 − 1/0.875)·6000 = −477 kWh, 72 EUR.
  ['a better motor', 89.5, 87.5, /477 kWh less a year \(72 EUR\)/],
  ['a worse motor', 87.5, 89.5, /477 kWh more a year \(72 EUR\)/],
  ['the same', 89.5, 89.5, /no difference/],
])('%s is a note with the year’s energy at the site’s price', (_, have, had, says) => {
  const found = asked(efficiencyClass, set({ failed: failed(had) }), motor({ ratings: plate(have) }), site);
  expect(found).toMatchObject({ grade: 'note', have, need: had, unit: '%' });
  expect(found?.says).toMatch(says);
});

test.each([
  ['hours untold: for 1000 h', { pricePerKwh: 0.15, currency: 'EUR' }, /80 kWh less in 1000 h \(12 EUR\)/],
  ['price untold: energy alone', { hoursPerYear: 6000 }, /477 kWh less a year\.$/],
])('%s', (_, settings, says) => {
  const found = asked(efficiencyClass, set({ failed: failed(87.5) }), motor({ ratings: plate(89.5) }), settings);
  expect(found?.says).toMatch(says);
});

test('a faster motor pumps more, and that is in its energy', () => {
  const faster = motor({ ratings: plate(89.5, 1770) });
  // Slip 30·16.916/20.116 = 25.2 rpm: 3.1·1774.8/1750 = 3.1439 kW against 3.1149; 0.02895/0.895·6000 = 194 kWh.
  const found = asked(efficiencyClass, set({ failed: failed(89.5) }), faster, site);
  expect(found?.says).toMatch(/194 kWh more a year.*: it would run faster, or further from its best load\./);
});

test.each([
  ['the candidate’s plate shows none', {}, { ratings: plate(null) }],
  ['the failed plate shows none', { failed: failed(null) }, {}],
  ['there is no failed plate', { failed: null }, {}],
])('is not asked where %s', (_, differs, plated) => {
  expect(asked(efficiencyClass, set(differs), motor(plated))).toBeNull();
});

test('without a load it compares the plates alone', () => {
  const asks = set({ failed: failed(87.5), load: { shaftKw: null } });
  expect(asked(efficiencyClass, asks, motor())?.says).toMatch(
    /89\.5 % .*against the failed motor’s 87\.5 %.*not known/,
  );
});

test('names the level the plate reaches: 89.5 % of 5 hp, 4 poles, enclosed, is premium (NEMA MG 1 Table 12-12)', () => {
  const says = (differs: object) => asked(efficiencyClass, set(), motor({ ratings: plate(89.5), ...differs }))?.says;
  expect(says({})).toContain('premium level');
  expect(says({ enclosure: null })).not.toContain('level');
});
