import { expect, test } from 'vitest';
import { type Changes, iec, isWellFormed, judged, near, nema, standing } from './whole-case';

// Cases where several questions of the supply answer at once, and the sum of them is the verdict and its hours.

test('a 400/690 V motor on a star-delta starter with its overload in the delta: nothing to do', () => {
  const ratings = [
    { volts: 400, hertz: 50, kw: 15, rpm: 1465, amps: 28, connection: 'delta' },
    { volts: 690, hertz: 50, kw: 15, rpm: 1465, amps: 16.2, connection: 'star' },
  ];
  const found = judged(iec, {
    both: { ratings, frame: '160L' },
    set: {
      // 0.58 × 28 = 16.24 A; 1.25 × 28 = 35 A
      supply: {
        start: 'star-delta',
        volts: 400,
        overloadIn: 'phase',
        overloadMinA: 14,
        overloadMaxA: 20,
        contactorA: 32,
        cableA: 35,
      },
      load: { kind: 'quadratic', shaftKw: 12, atPumpRpm: 1465, breakawayPct: 25, staticHeadPct: 0 },
    },
  });
  expect(standing(found)).toEqual([]);
  expect(found.of('full-load-current')).toMatchObject({ grade: 'ok', have: near(16.24, 4), need: 20 });
  // T_fl = 9549.30 × 15/1465 = 97.775; design N, 10 to 16 kW, 4 poles: 1.5; a third: 48.887. Need 0.25 × 78.220 = 19.555
  expect(found.of('breakaway')).toMatchObject({ grade: 'ok', have: near(48.887, 2), need: near(19.555, 2) });
  // Quadratic at 80 %: 35·0.8·(n/1465)² = 1500 − n gives 1471.74; (1471.74/1465)³ × 12 = 12.1664 kW
  expect(found.operatingPoint).toMatchObject({ motorRpm: 1471.7, pumpKw: near(12.166, 2), loadPct: 81.1 });
  expect(found).toMatchObject({ verdict: 'straight-swap', hours: 2 });
  isWellFormed(found);
});

test('a bigger motor: new overload, a thin cable and no contactor for it', () => {
  const ratings = [{ volts: 460, hertz: 60, hp: 7.5, rpm: 1755, amps: 9.6 }];
  const found = judged(nema, { motor: { ratings }, set: { supply: { cableA: 11, contactorA: 9.6 } } });
  // 9.6 over the dial's 9; 1.25 × 9.6 = 12 over 11; 9.6 on 9.6
  expect(found.of('full-load-current')).toMatchObject({
    grade: 'check',
    have: 12,
    need: 11,
    difference: 1,
    work: { id: 'overload' },
  });
  expect(found.verdict).toBe('check-first');
  const small = judged(nema, { motor: { ratings }, set: { supply: { cableA: 11, contactorA: 9 } } });
  expect(small.of('full-load-current')).toMatchObject({ grade: 'block', have: 9.6, need: 9, work: { id: 'overload' } });
  expect(small.verdict).toBe('unsuitable');
});

test('a 230 V motor on a 460 V supply', () => {
  const ratings = [{ volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 }];
  const found = judged(nema, { motor: { ratings } });
  expect(found.of('voltage')).toMatchObject({ grade: 'block', have: 230, need: 460, difference: -230 });
  expect(found.verdict).toBe('unsuitable');
});

test('a 60 Hz spare for a 50 Hz place: 5 hp on 380 V gives 2.98 kW, and 2.5 kW at 1450 rpm asks no more', () => {
  // φ = (380/50)/(460/60) = 0.99130, φ² = 0.98268; load 16.464 of 20.345; slip 50 × 0.80924/0.98268 = 41.175; 1458.8 rpm;
  // 2.5 × 1458.825/1450 = 2.5152 kW of 2.9828 = 84.3 %
  const failed = { ratings: [{ volts: 380, hertz: 50, kw: 3, rpm: 1450, amps: 6.8 }], design: 'N', codeLetter: null };
  const found = judged(nema, {
    failed,
    set: {
      supply: { volts: 380, hertz: 50, overloadMinA: 5, overloadMaxA: 9 },
      load: { shaftKw: 2.5, atPumpRpm: 1450 },
    },
  });
  expect(standing(found)).toEqual(['frequency check']);
  expect(found.of('frequency')).toMatchObject({ grade: 'check', have: 60, need: 50, difference: 10, by: 'person' });
  expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(2.9828), need: near(2.5152) });
  expect(found.operatingPoint).toMatchObject({
    motorRpm: 1458.8,
    motorKw: near(2.5152),
    loadPct: 84.3,
    torquePct: 80.9,
  });
  // 1.85 × 20.345 × 0.98268 = 36.987; need 1.1 × 16.464 = 18.111
  expect(found.of('breakaway')).toMatchObject({ grade: 'ok', have: near(36.987, 2), need: near(18.111, 2) });
  expect(found).toMatchObject({ verdict: 'check-first', hours: 2 });
  isWellFormed(found);
});

test('its code letter does not hold at 50 Hz: the inrush is for the plate to tell', () => {
  const found = judged(nema, { set: { supply: { volts: 380, hertz: 50, instantaneousTripA: 200 } } });
  expect(found.of('starting')).toMatchObject({ grade: 'check', have: null, need: 200, by: 'reading' });
});

test('a set that tells next to nothing of its supply asks only what physics asks', () => {
  const bare = {
    start: null,
    overloadMinA: null,
    overloadMaxA: null,
    overloadIn: null,
    contactorA: null,
    cableA: null,
  };
  const found = judged(nema, { set: { supply: bare, load: { breakawayPct: null } } });
  expect(found.of('starting')).toBeNull();
  expect(found.of('full-load-current')).toBeNull();
  expect(found.of('drive-suitability')).toBeNull();
  expect(found.of('breakaway')).toBeNull();
  expect(found.verdict).toBe('straight-swap');
});

test('a motor that tells next to nothing is a check where the set or physics asks, and nowhere else', () => {
  const found = judged(nema, {
    motor: {
      ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750 }],
      design: null,
      codeLetter: null,
      leads: null,
      serviceFactor: null,
    },
    set: { load: { breakawayPct: null } },
  });
  expect(standing(found)).toEqual(['full-load-current check']);
  expect(found.of('full-load-current')).toMatchObject({ have: null, need: 9, by: 'reading' });
  expect(found.operatingPoint.amps).toBeNull();
});

test('unbalance, height and heat multiply', () => {
  // 50 °C at 2000 m leaves 0.86 (an application manual), 2 % of unbalance 0.95 (Figure 14-1): 0.817 × 3.7285 = 3.0462 kW
  // against 3.0167 kW
  const found = judged(nema, {
    set: { supply: { unbalancePct: 2 }, surroundings: { ambientC: 50, altitudeM: 2000 } },
  });
  expect(found.of('temperature-altitude')).toMatchObject({ grade: 'note', have: 40, need: 50, unit: '°C' });
  expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(3.0462), need: near(3.0167) });
  expect(found.verdict).toBe('straight-swap');
  // 3.1 kW: slip 41.572; 3.1 × 1758.43/1750 = 3.1149, 1.0226 of it: no service factor at height
  const more = judged(nema, {
    set: { supply: { unbalancePct: 2 }, surroundings: { ambientC: 50, altitudeM: 2000 }, load: { shaftKw: 3.1 } },
  });
  expect(more.of('power')).toMatchObject({ grade: 'block', have: near(3.0462), need: near(3.1149) });
});

test('a drive keeps the unbalance of its input from the motor', () => {
  const drive = { ratedA: 10, overloadPct: 150, outputVolts: 460, baseHertz: 60, minHertz: 60, maxHertz: 60 };
  const supply = { start: 'drive', drive, unbalancePct: 4 };
  expect(judged(nema, { both: { driveDuty: 'inverter' }, set: { supply } }).of('power')).toMatchObject({
    grade: 'ok',
    have: near(3.7285),
  });
});

test('each reading tells where', () => {
  const blind: Changes[] = [
    { set: { supply: { volts: null } } },
    { set: { supply: { hertz: null } } },
    { set: { supply: { hertz: null, volts: null } } },
    { set: { supply: { volts: null, hertz: 50 } } },
    { set: { supply: { phases: null } } },
    { set: { supply: { start: 'soft' } } },
    { set: { supply: { start: 'star-delta', overloadIn: null } } },
    { motor: { ratings: [], phases: null, design: null } },
  ];
  for (const changes of blind)
    for (const { criterion, reading } of judged(nema, changes).findings)
      if (reading !== null) expect(reading, criterion).toMatch(PLACE);
});

const PLACE = /plate|starter|isolator|terminal box|sheet|drive|pump|motor|sister|gear/;
