import fc from 'fast-check';
import { expect, test } from 'vitest';
import { oversizedCost } from '@/lib/energy/oversized-cost';
import { defaultSettings } from '@/lib/matching/default-settings';
import { motor, set } from '../matching/easy';

const site = { ...defaultSettings, pricePerKwh: 0.12, currency: 'EUR', hoursPerYear: 6_000 };
const plate = (rpm: number, efficiencyPct: number, kw = 22) =>
  motor({ ratings: [{ volts: 400, hertz: 50, kw, rpm, amps: 40, pf: 0.88, efficiencyPct }] });
const pump = (kind: 'quadratic' | 'constant-torque', shaftKw = 18.7) =>
  set({ failed: plate(1465, 91.6), supply: { volts: 400, hertz: 50 }, load: { kind, shaftKw, atPumpRpm: 1465 } });

test('at the same speed a better motor saves what its efficiency says', () => {
  // A file on motor upgrades: 22 kW at 85 %, 91.6 against 94.5 %, 6000 h: 3759 kWh.
  const asked = set({
    ...{ failed: plate(1465, 91.6), supply: { volts: 400, hertz: 50 } },
    load: { kind: 'constant-torque', shaftKw: 18.7, atPumpRpm: 1470.3 },
  });
  const { moreKwhPerYear, moreRpm } = oversizedCost(asked, plate(1465, 91.6), plate(1465, 94.5), site);
  expect(moreRpm.value).toBeCloseTo(0, 9);
  expect((moreKwhPerYear.value ?? 0) / -3_759).toBeCloseTo(1, 2);
});

// Pumps & Systems, premium-efficient motors on older pump systems: shaft power goes with the cube of the speed of a
// centrifugal pump; a vendor's page on loads: with the speed of a constant-torque one.
test.each([
  ['quadratic', 3],
  ['constant-torque', 1],
] as const)('a faster motor on a %s load takes the power to the %i', (kind, power) => {
  const { was, instead, moreShaftKw } = oversizedCost(pump(kind), plate(1465, 91.6), plate(1485, 94.5), site);
  const faster = (instead.motorRpm.value ?? 0) / (was.motorRpm.value ?? 0);
  expect(faster).toBeGreaterThan(1.005);
  expect((instead.loadKw.value ?? 0) / (was.loadKw.value ?? 0)).toBeCloseTo(faster ** power, 6);
  expect(moreShaftKw.value).toBeGreaterThan(0);
});

test('so a saving can turn into a loss: 0.6 points better and 20 rpm faster takes more', () => {
  const { moreKwhPerYear, moreMoneyPerYear } = oversizedCost(
    pump('quadratic'),
    plate(1465, 91.6),
    plate(1485, 92.2),
    site,
  );
  expect(moreKwhPerYear.value).toBeGreaterThan(0);
  expect(moreMoneyPerYear.value).toBeCloseTo((moreKwhPerYear.value ?? 0) * 0.12, 6);
});

test('a smaller motor at a low load has the better power factor', () => {
  const { moreKvar, was, instead } = oversizedCost(pump('quadratic', 6), plate(1465, 91.6), plate(1460, 90, 7.5), site);
  expect(was.loadPct.value).toBeLessThan(40);
  expect(instead.powerFactor.value ?? 0).toBeGreaterThan(was.powerFactor.value ?? 1);
  expect(moreKvar.value).toBeLessThan(0);
});

test('the same motor takes the same, whatever it is', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1_400, max: 1_495 }),
      fc.double({ min: 70, max: 96, noNaN: true }),
      (rpm, efficiencyPct) => {
        const one = plate(rpm, efficiencyPct);
        const { moreKwhPerYear } = oversizedCost(pump('quadratic'), one, one, site);
        expect(moreKwhPerYear.value ?? 0).toBe(0);
      },
    ),
  );
});

test('an unknown slip of the other motor leaves its difference unknown, with the reason', () => {
  const other = motor({ ratings: [{ volts: 400, hertz: 50, kw: 22, rpm: null, efficiencyPct: 94.5 }] });
  const { moreKwhPerYear, was } = oversizedCost(pump('quadratic'), plate(1465, 91.6), other, site);
  expect(was.kwhPerYear.value).not.toBeNull();
  expect(moreKwhPerYear).toMatchObject({ value: null, why: expect.stringMatching(/\S/) });
});
