import { describe, expect, test } from 'vitest';
import { iec, isWellFormed, judged, near, nema, standing } from './whole-case';

// Rated torque of the 5 hp motor: 9549.30 × 3.7285 / 1750 = 20.345 N·m; the pump asks 9549.30 × 3 / 1750 = 16.370 N·m,
// so at φ = 1 it slips 50 × 16.370 / 20.345 = 40.231 rpm. φ = (V/f)/(Vn/fn); slip goes with 1/φ².

test('the twin of the failed motor is a straight swap', () => {
  const found = judged(nema);
  expect(standing(found)).toEqual([]);
  isWellFormed(found);
  expect(found).toMatchObject({ verdict: 'straight-swap', hours: 2 });
  // 1800 − 40.231 = 1759.769; 3 × 1759.769/1750 = 3.0167 kW of 3.7285 = 80.9 %; 6.6 × 0.8091 = 5.34 A
  expect(found.operatingPoint).toEqual({
    motorRpm: 1759.8,
    pumpRpm: 1759.8,
    pumpKw: near(3.0167),
    motorKw: near(3.0167),
    loadPct: 80.9,
    torquePct: 80.5,
    amps: 5.34,
    flowChangePct: 0.6,
  });
});

test('the IEC twin as well', () => {
  const found = judged(iec);
  expect(standing(found)).toEqual([]);
  isWellFormed(found);
  // T_fl = 9549.30 × 4/1445 = 26.434; load 21.147 = 80 %; slip 0.8 × 55 = 44; 1456 rpm; 3.2 × 1456/1445 = 3.2244 kW
  expect(found.operatingPoint).toEqual({
    motorRpm: 1456,
    pumpRpm: 1456,
    pumpKw: near(3.2244),
    motorKw: near(3.2244),
    loadPct: 80.6,
    torquePct: 80,
    amps: 6.53,
    flowChangePct: 0.8,
  });
});

test('480 V on a 460 V plate is ok by design, and it slips less', () => {
  const found = judged(nema, { set: { supply: { volts: 480 } } });
  // φ² = (480/460)² = 1.08885; 40.231/1.08885 = 36.948; 1763.05 rpm; 3 × 1763.05/1750 = 3.0224 kW
  expect(found.of('voltage')).toMatchObject({
    grade: 'ok',
    have: 460,
    need: 480,
    unit: 'V',
    difference: -20,
    by: null,
    work: null,
  });
  expect(found.operatingPoint).toMatchObject({ motorRpm: 1763.1, motorKw: near(3.0224) });
  expect(found.verdict).toBe('straight-swap');
});

test('440 V at 60 Hz on a 460 V plate is within 5 %', () => {
  const found = judged(nema, { set: { supply: { volts: 440 } } });
  // −4.35 %; φ² = 0.91493; slip 43.971; 1756.03 rpm
  expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 460, need: 440, difference: 20 });
  expect(found.operatingPoint.motorRpm).toBe(1756);
  expect(found.verdict).toBe('straight-swap');
});

describe('nominal systems above the plate by design', () => {
  test.each([
    [208, 200],
    [240, 230],
    [480, 460],
    [600, 575],
  ])('%i V on a %i V plate', (volts, plate) => {
    const found = judged(nema, {
      both: { ratings: [{ volts: plate, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] },
      set: { supply: { volts } },
    });
    expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: plate, need: volts, difference: plate - volts });
    expect(found.verdict).toBe('straight-swap');
  });
});

describe('the edges at 5 and 10 % of 460 V', () => {
  test.each([
    [483, 'ok'], // + 5 %
    [484, 'check'],
    [437, 'ok'], // − 5 %
    [436, 'check'],
    [506, 'check'], // + 10 %
    [507, 'block'],
    [414, 'check'], // − 10 %
    [413, 'block'],
  ])('%i V: %s', (volts, grade) => {
    const found = judged(nema, { set: { supply: { volts, measuredVolts: null } } });
    expect(found.of('voltage')).toMatchObject({ grade, have: 460, need: volts, difference: 460 - volts });
    isWellFormed(found);
  });
});

describe('50 Hz systems', () => {
  test.each([
    // plate, supply, grade, the torque told: (V/Vn)²
    [400, 415, 'ok', null], // + 3.75 %
    [380, 400, 'check', '111 %'], // + 5.26 %, 1.1080
    [380, 415, 'check', '119 %'], // + 9.21 %, 1.1927
    [440, 415, 'check', '89 %'], // − 5.68 %, 0.8896
    [415, 440, 'check', '112 %'], // + 6.02 %, 1.1241
    [380, 420, 'block', null], // + 10.5 %
    [415, 400, 'ok', null], // − 3.6 %
    [415, 380, 'check', '84 %'], // − 8.4 %, 0.8384
    [415, 373, 'block', null], // − 10.1 %
  ])('a %i V plate on %i V: %s', (plate, volts, grade, torque) => {
    const found = judged(iec, {
      both: { ratings: [{ volts: plate, hertz: 50, kw: 4, rpm: 1445, amps: 8.1, connection: 'delta' }] },
      set: { supply: { volts } },
    });
    const voltage = found.of('voltage');
    expect(voltage).toMatchObject({ grade, have: plate, need: volts, difference: plate - volts });
    if (torque !== null) {
      expect(voltage?.says).toContain(torque);
      expect(voltage?.by).toBe('reading');
    }
    expect(found.verdict).toBe(grade === 'ok' ? 'straight-swap' : grade === 'check' ? 'check-first' : 'unsuitable');
  });
});

test('a 208–230 V plate at 208 V is a check: (208/230)² = 82 %', () => {
  const found = judged(nema, {
    both: { ratings: [{ volts: 230, voltsMin: 208, voltsMax: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 }] },
    set: { supply: { volts: 208, overloadMinA: 9, overloadMaxA: 15 } },
  });
  expect(found.of('voltage')).toMatchObject({ grade: 'check', need: 208, by: 'reading' });
  expect(found.of('voltage')?.says).toContain('82 %');
  expect(found.verdict).toBe('check-first');
});

const DUAL = [
  { volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2, connection: 'parallel-star' },
  { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, connection: 'series-star' },
];

test('a nine-lead 230/460 V motor is judged on the row at 460 V', () => {
  const found = judged(nema, { both: { ratings: DUAL, winding: 'star-9' } });
  expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 460, need: 460, difference: 0 });
  expect(found.of('full-load-current')).toMatchObject({ grade: 'ok', have: 6.6 });
  expect(found.verdict).toBe('straight-swap');
});

test('and on the row at 230 V, where the overload has to reach 13.2 A', () => {
  const found = judged(nema, { both: { ratings: DUAL, winding: 'star-9' }, set: { supply: { volts: 230 } } });
  expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 230, need: 230, difference: 0 });
  expect(found.of('full-load-current')).toMatchObject({
    grade: 'work',
    have: 13.2,
    need: 9,
    unit: 'A',
    difference: 4.2,
    work: { id: 'overload', hours: 0.25 },
  });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 2.25 });
});

describe('a printed range 380 to 420 V', () => {
  test.each([
    [380, 'ok'],
    [400, 'ok'],
    [420, 'ok'],
    [361, 'ok'], // 5 % below its low end
    [441, 'ok'], // 5 % above its high end
    [442, 'check'],
    [360, 'check'],
    [462, 'check'], // 10 % above
    [463, 'block'],
    [342, 'check'],
    [341, 'block'],
  ])('%i V: %s', (volts, grade) => {
    const found = judged(iec, {
      both: {
        ratings: [
          { volts: 400, voltsMin: 380, voltsMax: 420, hertz: 50, kw: 4, rpm: 1445, amps: 8.1, connection: 'delta' },
        ],
      },
      set: { supply: { volts } },
    });
    expect(found.of('voltage')).toMatchObject({ grade, have: 400, need: volts, difference: 400 - volts });
  });
});

describe('measured volts win over the nominal', () => {
  test.each([
    [430, 'check', 30], // − 6.5 %
    [500, 'check', -40], // + 8.7 %, though 480 V is a system by design
    [507, 'block', -47],
    [470, 'ok', -10],
  ])('%i V measured on 480 V: %s', (measuredVolts, grade, difference) => {
    const found = judged(nema, { set: { supply: { volts: 480, measuredVolts } } });
    expect(found.of('voltage')).toMatchObject({ grade, have: 460, need: measuredVolts, difference });
    // It has been measured already: no reading is left to take.
    if (grade === 'check') expect(found.of('voltage')).toMatchObject({ by: 'person', reading: null });
  });
});

describe('unbalance over 1 % derates, over 5 % blocks', () => {
  // Published derating points: 1.5 % 0.97, 5 % 0.76. 3.0167 kW of 3.7285 × 0.76 = 2.8337 is 1.065: the service factor.
  test.each([
    [0, 'ok', 3.7285, 'ok', 'straight-swap'],
    [1, 'ok', 3.7285, 'ok', 'straight-swap'],
    [1.5, 'note', 3.6166, 'ok', 'straight-swap'],
    [5, 'note', 2.8337, 'check', 'check-first'],
    [5.1, 'block', null, null, 'unsuitable'],
  ])('%d %%', (unbalancePct, grade, kw, power, verdict) => {
    const found = judged(nema, { set: { supply: { unbalancePct } } });
    expect(found.of('voltage')?.grade).toBe(grade);
    if (kw !== null) expect(found.of('power')).toMatchObject({ grade: power, have: near(kw), need: near(3.0167) });
    expect(found.verdict).toBe(verdict);
  });
});

test('supply volts not told: a reading at the starter', () => {
  const found = judged(nema, { set: { supply: { volts: null } } });
  expect(found.of('voltage')).toMatchObject({ grade: 'check', have: 460, need: null, difference: null, by: 'reading' });
  expect(found.verdict).toBe('check-first');
  isWellFormed(found);
});

test('plate volts not told: a reading at the plate', () => {
  const found = judged(nema, { motor: { ratings: [{ hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }] } });
  expect(found.of('voltage')).toMatchObject({ grade: 'check', have: null, need: 460, difference: null, by: 'reading' });
  expect(found.verdict).toBe('check-first');
  isWellFormed(found);
});

describe('a range alone, 380 to 420 V: outside it the nearer end is compared', () => {
  test.each([
    [400, 'ok', '380–420', null],
    [440, 'ok', 420, -20], // + 4.8 %
    [360, 'check', 380, 20], // − 5.3 %
    [470, 'block', 420, -50], // + 11.9 %
  ])('%i V: %s', (volts, grade, have, difference) => {
    const ratings = [
      { voltsMin: 380, voltsMax: 420, hertz: 50, kw: 4, rpm: 1445, amps: 8.1, connection: 'delta' as string },
    ];
    expect(judged(iec, { both: { ratings }, set: { supply: { volts } } }).of('voltage')).toMatchObject({
      grade,
      have,
      need: volts,
      difference,
    });
  });
});
