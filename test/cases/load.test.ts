import { expect, test } from 'vitest';
import { judged, near, nema, standing } from './whole-case';

// By hand: P = T·n/9549.30; between no load and full load the slip follows torque (NEMA MG 1 1.19, linear: handbook).
// 5 hp = 3.72850 kW at 1750 rpm: T = 20.3454 N·m. 3 kW at 1750 rpm: 16.3702 N·m, 80.46 % of it.

test('the twin: 1800 less 80.46 % of 50 rpm, and the pump takes that much more', () => {
  const found = judged(nema);
  expect(standing(found)).toEqual([]);
  expect(found.of('speed')).toMatchObject({ grade: 'ok', have: near(1759.77, 1), need: 1750, unit: 'rpm' });
  expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(3.7285), need: near(3.0167) });
  expect(found.operatingPoint).toMatchObject({ motorRpm: 1759.8, loadPct: 80.9, torquePct: 80.5 });
});

test('six poles, shaft to shaft: a third slower, and out', () => {
  // T_fl = 9549.30 × 3.7285/1150 = 30.9606; 1200 − 50 × 0.52874 = 1173.56; −32.9 %
  const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1150, amps: 7.2 }];
  const found = judged(nema, { motor: { poles: 6, ratings } });
  expect(found.of('speed')).toMatchObject({ grade: 'block', have: near(1173.56, 1), need: 1750 });
  expect(found.verdict).toBe('unsuitable');
});

test('the same over a belt: another sheave, half as large again, and its two hours', () => {
  const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1150, amps: 7.2 }];
  const belt = { coupling: { type: 'belt', sheave: { pitchDiameterMm: 150, changeable: true } } };
  const found = judged(nema, { motor: { poles: 6, ratings }, set: belt });
  // A belt loses 5 % (common practice, no source): 3.15789 kW; n² − 1200 n + 50 × 9549.30 × 3.15789/30.9606 = 0:
  // n = 1157.94; 150 × 1750/1157.94 = 226.7 mm
  const what = expect.stringContaining('226.7 mm');
  expect(found.of('speed')).toMatchObject({ grade: 'work', work: { id: 'sheave', what, hours: 2 } });
  expect(found.of('power')).toMatchObject({ grade: 'ok', need: near(3.1579) });
  expect(found.hours).toBe(4);
  const fixed = judged(nema, {
    motor: { poles: 6, ratings },
    set: { coupling: { type: 'belt', sheave: { pitchDiameterMm: 150, changeable: false } } },
  });
  expect(fixed.of('speed')?.grade).toBe('block');
});

test('3 hp where 3 kW are asked: overloaded beyond its service factor', () => {
  // T_fl = 12.2073: 134 % of it is beyond where slip follows torque, so the load is taken as it is told: 3/2.2371 = 1.341
  const ratings = [{ volts: 460, hertz: 60, hp: 3, rpm: 1750, amps: 4.2 }];
  const found = judged(nema, { motor: { ratings } });
  expect(found.of('power')).toMatchObject({ grade: 'block', have: near(2.2371), need: 3, unit: 'kW' });
});

test('4 kW from 5 hp: in its service factor on the mains, too much above 1000 m', () => {
  // T = 21.8270, 107.28 %; 1800 − 53.64 = 1746.36; 21.8270 × 1746.36/9549.30 = 3.99168 of 3.7285 = 1.0706
  const found = judged(nema, { set: { load: { shaftKw: 4 } } });
  expect(found.of('power')).toMatchObject({ grade: 'check', have: near(3.7285), need: near(3.9917, 2), by: 'person' });
  const high = judged(nema, { set: { load: { shaftKw: 4 }, surroundings: { altitudeM: 1400 } } });
  expect(high.of('power')?.grade).toBe('block');
  const plain = judged(nema, { motor: { serviceFactor: 1 }, set: { load: { shaftKw: 4 } } });
  expect(plain.of('power')?.grade).toBe('block');
});

test('a fan-like load: torque with the square of speed, power with its cube', () => {
  // 40.2298·(n/1750)² = 1800 − n: n = 1759.34; 3 × 1.005337³ = 3.04831
  const found = judged(nema, { set: { load: { kind: 'quadratic', staticHeadPct: 0 } } });
  expect(found.operatingPoint).toMatchObject({ motorRpm: 1759.3, loadPct: 81.8 });
  expect(found.of('power')).toMatchObject({ grade: 'ok', need: near(3.0483, 2) });
});

test.each([
  // 15 hp: T_fl = 60.690; 1800 − 40 × 0.26974 = 1789.21; 3.06720 of 11.1855 = 27.4 %
  [15, 1760, 'note', 27.4],
  // 10 hp: T_fl = 40.575; 1800 − 45 × 0.40346 = 1781.84; 3.05457 of 7.4570 = 41.0 %
  [10, 1755, 'ok', 41],
] as const)('%s hp is far too large below 40 %%', (hp, rpm, grade, pct) => {
  const ratings = [{ volts: 460, hertz: 60, hp, rpm, amps: 8 }];
  expect(judged(nema, { motor: { ratings } }).of('loading')).toMatchObject({ grade, have: near(pct, 1), need: 40 });
});

test('nothing tells the load: the failed motor is the measure, and less than it is for a reading', () => {
  const load = { shaftKw: null, atPumpRpm: null };
  const same = judged(nema, { set: { load } });
  expect(same.of('power')).toMatchObject({ grade: 'ok', have: near(3.7285), need: near(3.7285) });
  const less = judged(nema, {
    motor: { ratings: [{ volts: 460, hertz: 60, hp: 3, rpm: 1750, amps: 4.2 }] },
    set: { load },
  });
  expect(less.of('power')).toMatchObject({ grade: 'check', by: 'reading', have: near(2.2371) });
  const alone = judged(nema, { failed: null, set: { load } });
  expect(alone.of('power')).toMatchObject({ grade: 'check', by: 'reading', need: null });
});

test('a motor for S3 is no motor for S1', () => {
  expect(judged(nema, { motor: { duty: 'S3' } }).of('duty')).toMatchObject({ grade: 'check', have: 'S3', need: 'S1' });
  expect(judged(nema, { both: { duty: 'S3' } }).of('duty')?.grade).toBe('note');
});
