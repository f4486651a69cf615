import { describe, expect, test } from 'vitest';
import { efficiencyClass } from '@/lib/matching/criteria/load/efficiency-class';
import { power } from '@/lib/matching/criteria/load/power';
import { customaryPair } from '@/lib/standards/customary-pair';
import { partLoad } from '@/lib/standards/part-load';
import { polesOfSpeed, synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { kwOfHp } from '@/lib/units/power';
import { motor, set } from '../matching/easy';
import { asked, pointOf } from '../matching/load/asked';

describe('synchronous speed, n = 120 f / p (read in two texts)', () => {
  test.each([
    [4, 50, 1500],
    [4, 60, 1800],
    [2, 60, 3600],
    [6, 60, 1200],
    [8, 60, 900],
  ])('%s poles at %s Hz: %s rpm', (poles, hertz, rpm) => {
    expect(synchronousSpeed(poles, hertz)).toBe(rpm);
  });

  test.each([
    // Public data sheets: full-load speeds (read in one text each).
    [1740, 60, 4],
    [1450, 50, 4],
    [2900, 50, 2],
    [2970, 50, 2],
    [1430, 50, 4],
  ])('%s rpm at %s Hz is of %s poles', (rpm, hertz, poles) => {
    expect(polesOfSpeed(rpm, hertz)).toBe(poles);
  });
});

/** A motor of so many hp and rpm, alone in a set that asks `shaftKw` at `atPumpRpm`. */
const plate = (hp: number, rpm: number, more: object = {}) => ({
  ratings: [{ volts: 460, hertz: 60, hp, rpm, ...more }],
});
const asks = (shaftKw: number, atPumpRpm: number, more: object = {}, supply: object = {}) =>
  set({ failed: null, load: { shaftKw, atPumpRpm, ...more }, supply });

// The US DOE fact sheet "Determining Electric Motor Load and Efficiency": load = slip / rated slip. Its example, from
// memory: 25 hp, 1750 rpm, runs at 1770: 30 of 50 rpm, 60 % of the load, 15 hp. By a straight torque line 60 % of the
// torque; in power 60 % times 1770/1750, which the fact sheet leaves out.
describe('load by slip', () => {
  test('60 % of the torque makes 30 of 50 rpm of slip: 1770 rpm', () => {
    const point = pointOf(asks(0.6 * kwOfHp(25), 1750), motor(plate(25, 1750)));
    expect(point.motorRpm).toBeCloseTo(1770, 6);
    expect(point.torquePct).toBeCloseTo(60, 6);
    expect(point.loadPct).toBeCloseTo((60 * 1770) / 1750, 6);
  });

  test('with voltage: 30 rpm at 440 V on a 460 V plate is 0.549 of the load (rule read in one text)', () => {
    const point = pointOf(asks(0.549 * kwOfHp(25), 1750, {}, { measuredVolts: 440 }), motor(plate(25, 1750)));
    expect(point.motorRpm).toBeCloseTo(1770, 1);
  });

  test('slip of an 1800 rpm field at 3 %: 1746 rpm (read in one text)', () => {
    expect(pointOf(asks(kwOfHp(10), 1746), motor(plate(10, 1746))).motorRpm).toBeCloseTo(1746, 6);
  });
});

// The same fact sheet by two texts: load = (I / In)·(V / Vn), good above half load.
test('load by current: 40 of 48 A at 470 V on a 460 V plate is 0.851 (from memory)', () => {
  const point = pointOf(
    asks(0.851 * kwOfHp(40), 1770, {}, { measuredVolts: 470 }),
    motor(plate(40, 1770, { amps: 48 })),
  );
  expect(point.loadPct).toBeCloseTo(85.1, 0);
  expect(point.amps).toBeCloseTo(40, 0);
});

// Public data sheets, makers withheld (read in one text each). 3 hp, 460 V: efficiency 89.5, 90.5 and 89.0 %, power factor
// 0.87, 0.82 and 0.72 at full, three-quarter and half load: I = P/(√3·V·η·cos φ). 22 kW, 400 V: 91.0, 91.3 and 90.4 %;
// 0.90, 0.87 and 0.79.
describe('amps at part load, within 3 %', () => {
  test.each([
    [1, 3.6],
    [0.75, 2.838],
    [0.5, 2.191],
  ])('%s of 3 hp: %s A', (share, amps) => {
    const three = motor(plate(3, 1740, { amps: 3.6, pf: 0.87 }));
    const found = pointOf(asks(share * kwOfHp(3), 1800 - 60 * share), three).amps;
    expect(Math.abs((found ?? 0) / amps - 1)).toBeLessThan(0.03);
  });

  test.each([
    [1, 38.77],
    [0.75, 29.98],
    [0.5, 22.23],
  ])('%s of 22 kW: %s A', (share, amps) => {
    const large = motor({ ratings: [{ volts: 400, hertz: 50, kw: 22, rpm: 1470, amps: 38.77, pf: 0.9 }] });
    const at = asks(share * 22, 1500 - 30 * share, {}, { volts: 400, hertz: 50 });
    expect(Math.abs((pointOf(at, large).amps ?? 0) / amps - 1)).toBeLessThan(0.03);
  });
});

describe('pump affinity laws (read in two texts)', () => {
  test('a centrifugal pump of 7.5 hp at 3419 rpm takes 8.3 hp at 3542 (read in one text)', () => {
    // A large motor of little slip that turns 3542 rpm under 8.3 hp.
    const large = motor({ poles: 2, ...plate(100, 3542.4), ratings: [{ volts: 460, hertz: 60, hp: 8.3, rpm: 3542 }] });
    const point = pointOf(asks(kwOfHp(7.5), 3419, { kind: 'quadratic', flowTolerancePct: 5 }), large);
    expect(point.motorRpm).toBeCloseTo(3542, 0);
    expect((point.pumpKw ?? 0) / kwOfHp(1)).toBeCloseTo(8.3, 1);
  });

  test('5 hp at 1700 rpm takes 8.1 hp at 2000 (read in one text): behind a motor of 2000 rpm', () => {
    const fast = motor({ poles: 2, ratings: [{ volts: 230, hertz: 35, kw: kwOfHp(8.1), rpm: 2000 }] });
    const at = asks(kwOfHp(5), 1700, { kind: 'quadratic' }, { volts: 230, hertz: 35 });
    const point = pointOf(at, fast);
    expect(point.motorRpm).toBeCloseTo(2000, -1);
    expect(Math.abs((point.pumpKw ?? 0) / kwOfHp(8.1) - 1)).toBeLessThan(0.01);
  });

  test('flow of a positive-displacement pump follows speed, its power too', () => {
    const { flowChangePct, pumpKw } = pointOf(asks(3, 1700), motor());
    expect(pumpKw).toBeCloseTo(3 * (1 + (flowChangePct ?? 0) / 100), 9);
  });
});

test('10 hp at a service factor of 1.15 carries 11.5 hp, and no more (read in one text)', () => {
  const ten = motor({ ...plate(10, 1750), serviceFactor: 1.15 });
  // Constant torque at the speed it runs at: 1.15·50 = 57.5 rpm of slip at most.
  const at = (hp: number) => asks(kwOfHp(hp), 1800 - (50 * hp * 1750) / (10 * 1742.5));
  expect(asked(power, at(11.4), ten)?.grade).toBe('check');
  expect(asked(power, at(11.6), ten)?.grade).toBe('block');
});

// 10 CFR 431.25 and 431.446, horsepower and standard kilowatt equivalent (read in two texts from 1 to 200 hp).
test.each([
  [1, 0.75],
  [1.5, 1.1],
  [2, 1.5],
  [3, 2.2],
  [5, 3.7],
  [7.5, 5.5],
  [10, 7.5],
  [20, 15],
  [50, 37],
  [100, 75],
  [125, 90],
  [200, 150],
])('10 CFR 431.25: %s hp is %s kW', (hp, kw) => {
  expect(customaryPair(kwOfHp(hp), kw)).toBe(true);
});

test('5 hp and 4 kW are neighbours in a swap, not equals (from memory)', () => {
  expect(customaryPair(kwOfHp(5), 4)).toBe(false);
});

// US DOE fact sheet, Figure 1, as digitised in a building-simulation library (read in one text).
test.each([
  [0.7, 0.2, 0.552],
  [2.5, 0.4, 0.923],
  [7.5, 0.2, 0.753],
  [15, 0.4, 0.98],
  [35, 0.1, 0.644],
  [70, 0.3, 0.987],
  [70, 1, 1],
])('part-load efficiency of %s kW at %s of its load: %s of its best', (kw, load, ratio) => {
  expect(partLoad(kw, load)).toBeCloseTo(ratio, 9);
});

describe('energy of a year', () => {
  const energy = (kw: number, load: number, had: number, have: number, site: object) => {
    const of = (efficiencyPct: number) => [{ volts: 400, hertz: 50, kw, rpm: 1500 * 0.98, efficiencyPct }];
    const failed = { id: 'M-0', poles: 4, phases: 3 as const, ratings: of(had) };
    // Speeds alike, so that only the efficiencies differ; the load is at the speed it runs at.
    const rpm = 1500 - 30 * load;
    const at = set({ failed, load: { shaftKw: kw * load, atPumpRpm: rpm }, supply: { volts: 400, hertz: 50 } });
    return asked(efficiencyClass, at, motor({ ratings: of(have) }), site)?.says ?? '';
  };
  const kwhIn = (says: string) => Number(/(\d+) kWh/.exec(says)?.[1]);

  test('22 kW at 85 %, 91.6 to 94.5 %, 6000 h at 0.15: 3759 kWh, 564 (read in one text)', () => {
    const says = energy(22, 0.85, 91.6, 94.5, { hoursPerYear: 6000, pricePerKwh: 0.15, currency: null });
    expect(Math.abs(kwhIn(says) / 3759 - 1)).toBeLessThan(0.005);
    expect(says).toMatch(/less a year \(56\d\)/);
  });

  test('60 hp at full load, 89.0 to 93.2 %, 3500 h: 7929 kWh (inputs read, answer worked out)', () => {
    const says = energy(kwOfHp(60), 1, 89, 93.2, { hoursPerYear: 3500, pricePerKwh: 0.08, currency: null });
    expect(Math.abs(kwhIn(says) / 7929 - 1)).toBeLessThan(0.005);
    expect(says).toMatch(/\(634\)|\(63[35]\)/);
  });

  test('75 hp at 75 %, 91.0 to 95.4 %, 4368 h: 9286 kWh (read in one text)', () => {
    const says = energy(kwOfHp(75), 0.75, 91, 95.4, { hoursPerYear: 4368, pricePerKwh: 0.12, currency: null });
    expect(Math.abs(kwhIn(says) / 9286 - 1)).toBeLessThan(0.01);
  });
});
