import { describe, expect, test } from 'vitest';
import { iec, isWellFormed, judged, near, nema } from './whole-case';

// φ = (V/f)/(Vn/fn): over 1.10 block, under 0.95 the torque falls to φ², under 0.80 block. Power: 50 to 60 Hz × φ·f/fn up
// to 1.15; 60 to 50 Hz by the derating table and never above 5/6. Service factor 1.0.

/** 2.4 kW at 1445 rpm in a place that minds neither flow nor amps: what is left is the frequency's own answer. */
const on60 = (volts: number) =>
  judged(iec, {
    failed: null,
    set: {
      seat: { shaftHeightMm: 112, holesAcrossMm: 190, holesAlongMm: 140, boltMm: 10 },
      supply: { volts, hertz: 60, overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null },
      load: { shaftKw: 2.4, flowTolerancePct: 30 },
    },
  });

describe('a 400 V 50 Hz 4 kW motor at 60 Hz', () => {
  test.each([
    // volts, grade, kW = 4 × min(1.15, φ × 1.2), torque told = φ²
    [529, 'block', null, null], // φ 1.102
    [528, 'check', 4.6, null], // φ 1.100
    [500, 'check', 4.6, null], // φ 1.0417, × 1.25
    [480, 'check', 4.6, null], // φ 1.000, × 1.2
    [460, 'check', 4.6, null], // φ 0.9583, × 1.15 exactly
    [456, 'check', 4.56, null], // φ 0.95, × 1.14
    [455, 'check', 4.55, '90 %'], // φ 0.9479, φ² 0.8985
    [440, 'check', 4.4, '84 %'], // φ 0.9167, φ² 0.8403
    [400, 'check', 4, '69 %'], // φ 0.8333, φ² 0.6944
    [384, 'check', 3.84, '64 %'], // φ 0.80
    [383, 'block', null, null], // φ 0.798
  ])('%i V: %s', (volts, grade, kw, torque) => {
    const found = on60(volts);
    const frequency = found.of('frequency');
    expect(frequency).toMatchObject({ grade, have: 50, need: 60, unit: 'Hz', difference: -10 });
    expect(found.of('voltage')).toBeNull();
    if (kw !== null) expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(kw), unit: 'kW' });
    if (grade === 'check') {
      expect(frequency).toMatchObject({ by: 'person', reading: null });
      expect(frequency?.says).toContain('service factor 1.0');
      if (torque === null) expect(frequency?.says).not.toContain('torque');
      else expect(frequency?.says).toContain(`torque ${torque}`);
    }
    isWellFormed(found);
  });

  test('480 V: φ = 1.00, the slip of its plate', () => {
    // T_fl 26.434; load 9549.30 × 2.4/1445 = 15.860 = 60 %; slip 0.6 × 55 = 33; 1767 rpm; 2.4 × 1767/1445 = 2.9348 kW
    const found = on60(480);
    expect(found.operatingPoint).toMatchObject({
      motorRpm: 1767,
      motorKw: near(2.9348),
      loadPct: 63.8, // of 4.6 kW
      torquePct: 60,
      flowChangePct: 22.3,
    });
    expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(4.6), need: near(2.9348) });
    expect(found.of('speed')).toMatchObject({ grade: 'ok', have: near(1767), need: 1445 });
    expect(found.verdict).toBe('check-first');
  });

  test('400 V: φ² = 0.694 makes it slip 33 / 0.6944 = 47.52 rpm', () => {
    expect(on60(400).operatingPoint.motorRpm).toBe(1752.5);
  });
});

/** A pump of 2.4 kW at 1450 rpm and a seat without a failed motor. */
const on50 = (volts: number, motor: { [key: string]: string } = {}, shaftKw = 2.4) =>
  judged(nema, {
    failed: null,
    motor,
    set: {
      seat: { shaftHeightMm: 114.3, holesAcrossMm: 190.5, holesAlongMm: 139.7, boltMm: 10 },
      supply: { volts, hertz: 50, overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null },
      load: { shaftKw, atPumpRpm: 1450 },
    },
  });

describe('a 460 V 60 Hz 5 hp motor at 50 Hz: the derating table, 380, 400 and 415 V', () => {
  test.each([
    // 5 hp = 3.7285 kW
    [380, {}, 2.9828, 'check'], // φ 0.9913, closed × 0.80
    [400, {}, 2.7964, 'check'], // φ 1.0435, × 0.75
    [415, {}, 2.61, 'check'], // φ 1.0826, × 0.70
    [380, { enclosure: 'ODP', ip: 'IP22' }, 3.1071, 'check'], // 0.85, but never above 5/6
    [400, { enclosure: 'ODP', ip: 'IP22' }, 2.9828, 'check'], // × 0.80
    [415, { enclosure: 'ODP', ip: 'IP22' }, 2.7964, 'check'], // × 0.75
    [422, {}, null, 'block'], // φ 1.1009
    [421, {}, null, 'check'], // φ 1.0983
    [306, {}, null, 'block'], // φ 0.798
  ])('%i V %j', (volts, motor, kw, grade) => {
    const found = on50(volts, motor);
    expect(found.of('frequency')).toMatchObject({ grade, have: 60, need: 50, unit: 'Hz', difference: 10 });
    if (kw !== null) expect(found.of('power')).toMatchObject({ have: near(kw) });
    isWellFormed(found);
  });

  test('400 V: it slips 50 × 15.806 / 20.345 / 1.08885 = 35.67 rpm', () => {
    // φ = (400/50)/(460/60) = 1.04348; 1500 − 35.67 = 1464.33; 2.4 × 1464.33/1450 = 2.4237 kW of 2.7964 = 86.7 %
    const found = on50(400);
    expect(found.operatingPoint).toMatchObject({ motorRpm: 1464.3, motorKw: near(2.4237), loadPct: 86.7 });
    expect(found.of('power')?.grade).toBe('ok');
  });

  test('its service factor of 1.15 is gone: 2.9 kW of 2.7964 blocks', () => {
    // load torque 19.099; slip 50 × 19.099/20.345/1.08885 = 43.11; 2.9 × 1456.89/1450 = 2.9138, 1.042 of 2.7964
    expect(on50(400, {}, 2.9).of('power')).toMatchObject({ grade: 'block', have: near(2.7964), need: near(2.9138) });
  });
});

test('the same volts at the lower frequency: 230 V 60 Hz on 230 V 50 Hz is φ 1.2', () => {
  const ratings = [{ volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 }];
  const found = judged(nema, { motor: { ratings }, set: { supply: { volts: 230, hertz: 50 } } });
  expect(found.of('frequency')).toMatchObject({ grade: 'block', have: 60, need: 50, difference: 10 });
  expect(found.verdict).toBe('unsuitable');
});

test('the same volts at the higher frequency: 230 V 50 Hz on 230 V 60 Hz is φ 0.833 and torque 69 %', () => {
  const ratings = [{ volts: 230, hertz: 50, kw: 4, rpm: 1445, amps: 14 }];
  const found = judged(iec, { motor: { ratings }, set: { supply: { volts: 230, hertz: 60 } } });
  expect(found.of('frequency')).toMatchObject({ grade: 'check', have: 50, need: 60, difference: -10 });
  expect(found.of('frequency')?.says).toContain('torque 69 %');
});

test('a plate with a row at the supply frequency is ok, and the other row does not count', () => {
  const ratings = [
    { volts: 400, hertz: 50, kw: 4, rpm: 1445, amps: 8.1 },
    { volts: 460, hertz: 60, kw: 4.6, rpm: 1745, amps: 8.1 },
  ];
  const found = judged(iec, {
    both: { ratings },
    set: { supply: { volts: 460, hertz: 60 }, load: { atPumpRpm: 1745 } },
  });
  expect(found.of('frequency')).toMatchObject({ grade: 'ok', have: 60, need: 60, difference: 0 });
  expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 460, need: 460, difference: 0 });
  expect(found.of('power')).toMatchObject({ grade: 'ok', have: 4.6 });
  expect(found.verdict).toBe('straight-swap');
});

test('measured volts make φ: 400/50 on 480 V 60 Hz that measures 530 V is φ 1.104', () => {
  const found = judged(iec, { set: { supply: { volts: 480, hertz: 60, measuredVolts: 530 } } });
  expect(found.of('frequency')).toMatchObject({ grade: 'block' });
});

describe('not told', () => {
  test('the supply: a reading, and no voltage is judged', () => {
    const found = judged(nema, { set: { supply: { hertz: null } } });
    expect(found.of('frequency')).toMatchObject({ grade: 'check', have: null, need: null, by: 'reading' });
    expect(found.of('voltage')).toBeNull();
    expect(found.verdict).toBe('check-first');
    isWellFormed(found);
  });

  test('the plate: a reading', () => {
    const found = judged(nema, { motor: { ratings: [{ volts: 460, hp: 5, rpm: 1750, amps: 6.6 }] } });
    expect(found.of('frequency')).toMatchObject({ grade: 'check', have: null, need: 60, by: 'reading' });
    expect(found.verdict).toBe('check-first');
    isWellFormed(found);
  });

  test('no ratings at all: frequency, power, speed and amps are checks with readings', () => {
    const found = judged(nema, { motor: { ratings: [] } });
    for (const criterion of ['frequency', 'power', 'full-load-current', 'breakaway'] as const)
      expect(found.of(criterion), criterion).toMatchObject({ grade: 'check', by: 'reading' });
    expect(found.verdict).toBe('check-first');
    isWellFormed(found);
  });

  test('the volts of another frequency: φ cannot be told', () => {
    const found = judged(iec, { set: { supply: { volts: null, hertz: 60 } } });
    expect(found.of('frequency')).toMatchObject({ grade: 'check', have: 50, need: 60, by: 'reading' });
    isWellFormed(found);
  });
});
