import { describe, expect, test } from 'vitest';
import type { PumpSetInput } from '@/lib/plant/set';
import { motor, set } from '../easy';
import { pointOf } from './asked';

// Expectations are hand arithmetic on the design's rule: T(n) = T_fl·φ²·(ns − n)/s, T_load(n) = T_ref·(n/n_ref)^k.
// The easy motor: 5 hp = 3.7285 kW at 1750 of 1800 rpm, so s = 50 rpm and T_fl = 9549.3·3.7285/1750 = 20.346 N·m.
// The easy load: 3.1 kW at 1750 rpm, 9549.3·3.1/1750 = 16.916 N·m, 0.83143 of T_fl.

const plate = (differs: object) => [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, ...differs }];
const none: ReturnType<typeof plate> = [];
const gear = { type: 'gear', ratio: 5 } as const;
const drive = { outputVolts: 460, baseHertz: 60, ratedA: 14 };
const onDrive = (differs: object = {}): PumpSetInput['supply'] => ({
  volts: 460,
  start: 'drive',
  drive: { ...drive, ...differs },
});

describe('the operating point on the mains', () => {
  test('of a constant torque: slip 50·0.83143 = 41.57 rpm', () => {
    const point = pointOf(set(), motor());
    expect(point.motorRpm).toBeCloseTo(1758.43, 2);
    expect(point.pumpRpm).toBeCloseTo(1758.43, 2);
    expect(point.flowChangePct).toBeCloseTo(0.4816, 3); // 1758.43/1750 − 1
    expect(point.pumpKw).toBeCloseTo(3.1149, 4); // 3.1·1.004816
    expect(point.motorKw).toBeCloseTo(3.1149, 4);
    expect(point.loadPct).toBeCloseTo(83.54, 2); // 3.1149/3.7285
    expect(point.torquePct).toBeCloseTo(83.14, 2);
    expect(point).toMatchObject({ why: null, hertz: null, restored: null, assumes: null });
  });

  test('at 480 V: φ² = 1.0888, slip 41.57/1.0888 = 38.18 rpm', () => {
    expect(pointOf(set({ supply: { volts: 480 } }), motor()).motorRpm).toBeCloseTo(1761.82, 2);
  });

  test('at 414 V: φ = 0.9, slip 41.57/0.81 = 51.32 rpm', () => {
    expect(pointOf(set({ supply: { measuredVolts: 414 } }), motor()).motorRpm).toBeCloseTo(1748.68, 2);
  });

  test('of a quadratic load: 1800 − n = 41.572·(n/1750)² at n = 1758.05; power with the cube', () => {
    const point = pointOf(set({ load: { kind: 'quadratic' } }), motor());
    expect(point.motorRpm).toBeCloseTo(1758.05, 2);
    expect(point.pumpKw).toBeCloseTo(3.143, 3); // 3.1·(1758.05/1750)³ = 3.1·1.01386
    expect(point.torquePct).toBeCloseTo(83.91, 2); // 83.143·(1758.05/1750)²
  });

  test('behind a gear of 90 %: slip 41.57/0.9 = 46.19 rpm', () => {
    const point = pointOf(set({ coupling: { ...gear, efficiencyPct: 90 }, load: { atPumpRpm: 350 } }), motor());
    expect(point.motorRpm).toBeCloseTo(1753.81, 2);
    expect(point.pumpRpm).toBeCloseTo(350.76, 2);
    expect(point.motorKw).toBeCloseTo(3.452, 3); // 3.1·1.002177/0.9
    expect(point.pumpKw).toBeCloseTo(3.1067, 4);
  });

  test('behind a belt: 95 %, common practice', () => {
    const coupling = { type: 'belt', ratio: 2 } as const;
    const point = pointOf(set({ coupling, load: { atPumpRpm: 875 } }), motor());
    expect(point.motorRpm).toBeCloseTo(1756.24, 2); // 1800 − 41.57/0.95
    expect(point.motorKw).toBeCloseTo(3.2748, 3); // 3.1/0.95·1756.24/1750
  });

  test('behind a gear whose losses are unknown tells the speed, and no power', () => {
    const point = pointOf(set({ coupling: gear, load: { atPumpRpm: 350 } }), motor());
    expect(point.motorRpm).toBeCloseTo(1758.43, 2);
    expect(point).toMatchObject({ motorKw: null, loadPct: null, torquePct: null, amps: null });
    expect(point.assumes).toContain('lossless');
  });

  test('ends at 1.25 times the rated torque: 4.6606 kW at 1750 rpm', () => {
    expect(pointOf(set({ load: { shaftKw: 4.66 } }), motor()).motorRpm).toBeCloseTo(1800 - 50 * 1.24983, 1);
    const beyond = pointOf(set({ load: { shaftKw: 4.662 } }), motor());
    expect(beyond).toMatchObject({ motorRpm: null, loadPct: null, flowChangePct: null, isBeyond: true });
    expect(beyond.why).toContain('1.25');
  });

  test('of low voltage ends sooner: at φ² = 0.81 beyond 1.0125 of T_fl', () => {
    expect(pointOf(set({ supply: { measuredVolts: 414 }, load: { shaftKw: 3.8 } }), motor()).isBeyond).toBe(true);
  });

  test('of a 60 Hz motor on 50 Hz: same slip in rpm at φ 1', () => {
    const supply = { volts: 460 * (50 / 60), hertz: 50 };
    const point = pointOf(set({ supply, load: { atPumpRpm: 1450, shaftKw: 2.5 } }), motor());
    // T = 9549.3·2.5/1450 = 16.464 N·m; slip 50·16.464/20.346 = 40.46; 1500 − 40.46
    expect(point.motorRpm).toBeCloseTo(1459.54, 2);
  });

  test.each([
    ['kind of load', { load: { kind: null } }, {}, 'kind of load'],
    ['shaft power', { load: { shaftKw: null } }, {}, 'Shaft power'],
    ['slip', {}, { ratings: plate({ rpm: 1800 }) }, 'slip'],
    ['rated power', {}, { ratings: plate({ hp: null }) }, 'power'],
    ['poles and speed', {}, { poles: null, ratings: plate({ rpm: null }) }, 'poles'],
    ['supply volts', { supply: { volts: null } }, {}, 'voltage'],
    ['supply hertz', { supply: { hertz: null } }, {}, 'rating'],
    ['any plate', {}, { ratings: none }, 'rating'],
    ['pump speed and ratio', { coupling: gear, load: { atPumpRpm: null }, failed: null }, {}, 'speed asked'],
  ] as const)('without %s says so and gives no figure', (_, differs, plate, why) => {
    const point = pointOf(set(differs), motor(plate));
    expect(point).toMatchObject({ motorRpm: null, pumpRpm: null, pumpKw: null, motorKw: null, amps: null });
    expect(point.why).toContain(why);
  });

  test('without a pump speed takes the failed plate, and says so', () => {
    const point = pointOf(set({ load: { atPumpRpm: null } }), motor());
    expect(point.motorRpm).toBeCloseTo(1758.43, 2);
    expect(point.assumes).toContain('failed');
  });
});

describe('the operating point on a drive', () => {
  test('keeps the frequency the failed motor needed', () => {
    // 1.55 kW at 875 rpm is 16.916 N·m: ns = 875 + 41.57 = 916.57 rpm, 30.552 Hz.
    const half = set({ supply: onDrive(), load: { atPumpRpm: 875, shaftKw: 1.55 } });
    const same = pointOf(half, motor());
    expect(same.hertz).toBeCloseTo(30.552, 3);
    expect(same.flowChangePct).toBeCloseTo(0, 9);
    // 1765 rpm: T_fl = 9549.3·3.7285/1765 = 20.173; slip 35·16.916/20.173 = 29.35; 916.57 − 29.35 = 887.22.
    const faster = pointOf(half, motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1765 }] }));
    expect(faster.motorRpm).toBeCloseTo(887.22, 2);
    expect(faster.flowChangePct).toBeCloseTo(1.397, 2);
  });

  test('above base: 1800·x = 2100 + 23.47·x² at x = 1.18498', () => {
    const point = pointOf(set({ supply: onDrive(), load: { atPumpRpm: 2100, shaftKw: 2.1 } }), motor());
    expect(point.hertz).toBeCloseTo(60 * 1.18498, 2); // drop: 9.5493 N·m·50/20.346
  });

  test.each([
    ['its maximum', { maxHertz: 50 }, 1750, 50],
    ['its minimum', { minHertz: 40 }, 875, 40],
  ])('stays inside %s', (_, limits, atPumpRpm, hertz) => {
    const shaftKw = (3.1 * atPumpRpm) / 1750;
    expect(pointOf(set({ supply: onDrive(limits), load: { atPumpRpm, shaftKw } }), motor()).hertz).toBe(hertz);
  });

  test('of a motor that runs in step is the field’s speed exactly', () => {
    const inStep = motor({ kind: 'permanent-magnet', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1800 }] });
    const point = pointOf(set({ supply: onDrive(), failed: null }), inStep);
    expect(point.motorRpm).toBeCloseTo(1750, 9);
    expect(point.hertz).toBeCloseTo((60 * 1750) / 1800, 9);
  });

  test('with φ 1, whatever the input voltage', () => {
    const supply = { ...onDrive(), volts: 480, measuredVolts: 414 };
    expect(pointOf(set({ supply }), motor()).flowChangePct).toBeCloseTo(0, 9);
  });
});

describe('the point once the speed is put right', () => {
  const slow = { ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1160, amps: 7 }], poles: 6 };

  test('by a sheave: the same power at the motor’s own speed', () => {
    const belt = set({ coupling: { type: 'belt', ratio: 2 }, load: { atPumpRpm: 875 } });
    const { restored } = pointOf(belt, motor(slow));
    // 3.1/0.95 = 3.2632 kW; T_fl = 9549.3·3.7285/1160 = 30.694; n(1200 − n)·30.694/40 = 9549.3·3.2632 at n = 600 + √(360 000 − 40 609) = 1165.15.
    expect(restored).toMatchObject({ by: 'sheave', hertz: null });
    expect(restored?.motorRpm).toBeCloseTo(1165.15, 2);
    expect(restored?.sheaveScale).toBeCloseTo(1750 / 1165.15, 4);
    expect(restored?.motorKw).toBeCloseTo(3.2632, 3);
    expect(restored?.pumpRpm).toBe(875);
  });

  test('by the drive: the frequency that makes the asked speed', () => {
    const two = motor({ poles: 2, ratings: [{ volts: 460, hertz: 60, hp: 10, rpm: 3500, amps: 12 }] });
    const { restored } = pointOf(set({ supply: onDrive() }), two);
    // T_fl = 9549.3·7.457/3500 = 20.346; slip 100·0.83143 = 83.14; (1750 + 83.14)/3600·60 = 30.552 Hz.
    expect(restored).toMatchObject({ by: 'drive', motorRpm: 1750 });
    expect(restored?.hertz).toBeCloseTo(30.552, 3);
  });
});

describe('operating amps', () => {
  test('scale with load times plate volts over volts where no power factor is plated', () => {
    const plain = motor({ ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] });
    expect(pointOf(set(), plain).amps).toBeCloseTo(6.6 * 0.8354, 2);
    expect(pointOf(set({ load: { shaftKw: 1.5 } }), plain).amps).toBeNull(); // under half load: DOE by two texts
  });

  test('have a reactive part where one is plated', () => {
    // 6.6·√((0.82·0.8354)² + (0.5724·(0.75 + 0.25·0.8354²))²), by hand 6.6·√(0.4693 + 0.2800).
    expect(pointOf(set(), motor()).amps).toBeCloseTo(5.71, 2);
  });
});
