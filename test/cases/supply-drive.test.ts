import { describe, expect, test } from 'vitest';
import { iec, isWellFormed, judged, near, nema, standing } from './whole-case';

type Part = { [key: string]: string | number | boolean | null };

/** The 5 hp set on a drive: 460 V and 60 Hz out, 20 to 60 Hz, 10 A and 150 %, where nothing else is stated. */
const onDrive = (drive: Part = {}, supply: Part = {}, load: Part = {}) => ({
  supply: {
    start: 'drive',
    overloadMinA: null,
    overloadMaxA: null,
    contactorA: null,
    cableA: null,
    drive: {
      ratedA: 10,
      overloadPct: 150,
      outputVolts: 460,
      baseHertz: 60,
      minHertz: 20,
      maxHertz: 60,
      cableM: null,
      filter: false,
      ...drive,
    },
    ...supply,
  },
  load,
});
/** Fit for a drive: declared for inverters, constant torque over 10:1. */
const FIT = { driveDuty: 'inverter', constantTorqueRange: 10 };

test('a fit twin: only the plate is entered in the drive, half an hour', () => {
  const found = judged(nema, { both: FIT, set: onDrive() });
  expect(standing(found)).toEqual(['drive-suitability work']);
  expect(found.of('drive-suitability')?.work).toMatchObject({ id: 'drive-settings', hours: 0.5 });
  expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 2.5 });
  // Set as before it makes 1750 rpm: 3 kW of 3.7285 is 80.5 %, 16.370 N·m of 20.345 as well
  expect(found.operatingPoint).toMatchObject({
    motorRpm: 1750,
    pumpRpm: 1750,
    pumpKw: 3,
    motorKw: 3,
    loadPct: 80.5,
    torquePct: 80.5,
    flowChangePct: 0,
  });
  isWellFormed(found);
});

test('another slip at the frequency that was set', () => {
  const ratings = [{ volts: 460, hertz: 60, hp: 5, rpm: 1770, amps: 6.6 }];
  const found = judged(nema, { both: FIT, motor: { ratings }, set: onDrive() });
  // The failed motor slipped 40.231: the field turns at 1790.231. T_fl is now 9549.30 × 3.7285/1770 = 20.1155, slip
  // 30 × 16.370/20.1155 = 24.414: 1765.82 rpm, + 0.904 %, 3 × 1.00904 = 3.0271 kW
  expect(found.operatingPoint).toMatchObject({ motorRpm: 1765.8, motorKw: near(3.0271), flowChangePct: 0.9 });
});

describe('declared for a drive', () => {
  const low = { ratings: [{ volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 }] };
  const range = { constantTorqueRange: 10 };
  const cases: [string, object, object, object, string, string | null][] = [
    ['inverter at 460 V', { ...FIT }, {}, {}, 'work', null],
    ['general at 460 V', { ...range, driveDuty: 'general' }, {}, {}, 'work', null],
    ['none at 460 V', { ...range, driveDuty: 'none' }, {}, {}, 'check', 'person'],
    ['not told at 460 V', { ...range, driveDuty: null }, {}, {}, 'check', 'reading'],
    ['none at 460 V with a filter', { ...range, driveDuty: 'none' }, { filter: true }, {}, 'work', null],
    ['none at 460 V on 10 m', { ...range, driveDuty: 'none' }, { cableM: 10 }, {}, 'check', 'person'],
    [
      'none at 230 V',
      { ...range, ...low, driveDuty: 'none' },
      { ratedA: 15, outputVolts: 230 },
      { volts: 230 },
      'work',
      null,
    ],
    [
      'none at 250 V',
      { ...range, ...low, ratings: [{ ...low.ratings[0], volts: 240 }], driveDuty: 'none' },
      { ratedA: 15, outputVolts: 250 },
      { volts: 240 },
      'work',
      null,
    ],
    ['none, output not told, 460 V in', { ...range, driveDuty: 'none' }, { outputVolts: null }, {}, 'check', 'person'],
  ];
  test.each(cases)('%s', (_, both, drive, supply, grade, by) => {
    const found = judged(nema, { both: both as Part, set: onDrive(drive as Part, supply as Part) });
    const suits = found.of('drive-suitability');
    // Whatever the grade, the new plate goes into the drive.
    expect(suits).toMatchObject({ grade, by, work: { id: 'drive-settings' } });
    if (grade === 'check') expect(suits?.says).toMatch(/peak/);
    expect(found.verdict).toBe(grade === 'check' ? 'check-first' : 'swap-with-work');
    isWellFormed(found);
  });

  test('the failed motor was made for inverters and this one is not, even at 230 V', () => {
    const found = judged(nema, {
      both: { ...FIT, ...low },
      motor: { driveDuty: 'none' },
      set: onDrive({ ratedA: 15, outputVolts: 230 }, { volts: 230 }),
    });
    expect(found.of('drive-suitability')).toMatchObject({
      grade: 'check',
      have: 'none',
      need: 'inverter',
      by: 'person',
    });
  });
});

describe('constant torque over 10:1 from 60 Hz', () => {
  test.each([
    [20, 'work', null], // 3:1
    [6, 'work', null], // 10:1 exactly
    [5, 'check', 12], // 12:1
  ])('down to %i Hz: %s', (minHertz, grade, need) => {
    const found = judged(nema, { both: FIT, set: onDrive({ minHertz }) });
    expect(found.of('drive-suitability')?.grade).toBe(grade);
    if (need !== null) expect(found.of('drive-suitability')).toMatchObject({ have: 10, need, difference: 10 - need });
    isWellFormed(found);
  });

  test('a range not told is a reading', () => {
    const found = judged(nema, { both: { driveDuty: 'inverter' }, set: onDrive() });
    expect(found.of('drive-suitability')).toMatchObject({ grade: 'check', have: null, need: 3, by: 'reading' });
  });

  test('a quadratic load asks little torque at low speed', () => {
    const set = onDrive({ minHertz: 5 }, {}, { kind: 'quadratic', staticHeadPct: 0 });
    expect(judged(nema, { both: FIT, set }).of('drive-suitability')?.grade).toBe('work');
  });
});

describe('judged against the output, not the input', () => {
  test('single phase in, three phases out', () => {
    const ratings = [{ volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 }];
    const set = onDrive({ ratedA: 15, outputVolts: 230 }, { phases: 1, volts: 230 });
    const found = judged(nema, { both: { ...FIT, ratings }, set });
    expect(found.of('phases')).toMatchObject({ grade: 'ok', have: 3, need: 3, difference: 0 });
    expect(found.verdict).toBe('swap-with-work');
  });

  test('a single-phase motor cannot run on it', () => {
    const motor = { kind: 'single-phase', phases: 1 };
    const found = judged(nema, { both: FIT, motor, set: onDrive({}, { phases: 1 }) });
    expect(found.of('phases')).toMatchObject({ grade: 'block', have: 1, need: 3, difference: -2 });
  });

  test('400 V 50 Hz out of 480 V 60 Hz', () => {
    const set = onDrive(
      { ratedA: 12, outputVolts: 400, baseHertz: 50, minHertz: 20, maxHertz: 50 },
      { volts: 480, hertz: 60 },
    );
    const found = judged(iec, { both: FIT, set: { ...set, load: { shaftKw: 3.2, atPumpRpm: 1445 } } });
    expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 400, need: 400, difference: 0 });
    expect(found.of('frequency')).toMatchObject({ grade: 'ok', have: 50, need: 50, difference: 0 });
    expect(found.operatingPoint).toMatchObject({ motorRpm: 1445, motorKw: 3.2, loadPct: 80 });
  });

  test('output volts not told: what comes in', () => {
    const found = judged(nema, { both: FIT, set: onDrive({ outputVolts: null }, { volts: 480 }) });
    expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 460, need: 480, difference: -20 });
  });

  test('measured volts and unbalance are of the input', () => {
    const found = judged(nema, { both: FIT, set: onDrive({}, { measuredVolts: 400, unbalancePct: 6 }) });
    expect(found.of('voltage')).toMatchObject({ grade: 'ok', have: 460, need: 460 });
    expect(found.of('power')).toMatchObject({ grade: 'ok', have: near(3.7285) });
  });
});

describe('no plated row at the base frequency: φ of the output', () => {
  const on = (volts: number, hertz: number, outputVolts: number, baseHertz: number) =>
    judged(iec, {
      both: {
        ...FIT,
        ratings: [{ volts, hertz, kw: 4, rpm: hertz === 50 ? 1445 : 1745, amps: 8.1, connection: 'delta' }],
      },
      set: onDrive({ ratedA: 12, outputVolts, baseHertz, minHertz: 20, maxHertz: baseHertz }),
    }).of('frequency');

  test.each([
    // plate, output, φ
    [400, 50, 480, 60, 'check'], // 1.000
    [460, 60, 400, 50, 'check'], // 1.043
    [230, 50, 400, 87, 'check'], // 0.9995: delta at 87 Hz
    [400, 50, 460, 60, 'check'], // 0.958
    [400, 50, 400, 60, 'check'], // 0.833
    [230, 60, 230, 50, 'block'], // 1.200
    [230, 50, 480, 60, 'block'], // 1.739
    [400, 50, 400, 87, 'block'], // 0.575
  ])('%i V %i Hz on %i V %i Hz: %s', (volts, hertz, outputVolts, baseHertz, grade) => {
    expect(on(volts, hertz, outputVolts, baseHertz)).toMatchObject({
      grade,
      have: hertz,
      need: baseHertz,
      unit: 'Hz',
      difference: hertz - baseHertz,
      by: grade === 'check' ? 'person' : null,
    });
  });

  test('0.833 tells a torque of 69 %', () => {
    expect(on(400, 50, 400, 60)?.says).toContain('69 %');
  });

  test('230/400 V at 87 Hz is taken in delta, and its power there is for a person to tell', () => {
    const ratings = [
      { volts: 230, hertz: 50, kw: 4, rpm: 1445, amps: 14, connection: 'delta' },
      { volts: 400, hertz: 50, kw: 4, rpm: 1445, amps: 8.1, connection: 'star' },
    ];
    const found = judged(iec, {
      both: { ...FIT, ratings },
      set: onDrive(
        { ratedA: 20, outputVolts: 400, baseHertz: 87, minHertz: 30, maxHertz: 87 },
        { volts: 400, hertz: 50 },
        { atPumpRpm: 2500, shaftKw: 4 },
      ),
    });
    expect(found.of('frequency')?.grade).toBe('check');
    expect(found.of('full-load-current')).toMatchObject({ have: 14, need: 20 });
    expect(found.of('power')).toMatchObject({ grade: 'check', by: 'person' });
    isWellFormed(found);
  });
});

test('the service factor is 1 on a drive: 3.9 kW of 3.7285 blocks', () => {
  // Load torque 21.281, slip 52.302: 60 Hz is its highest, so 1747.7 rpm and 3.9 × 1747.7/1750 = 3.8949 kW. 1.0446 of the
  // rating is inside 1.15 on the mains and over 1.02 here.
  const found = judged(nema, { both: FIT, set: onDrive({}, {}, { shaftKw: 3.9 }) });
  expect(found.of('power')).toMatchObject({ grade: 'block', have: near(3.7285), need: near(3.8949) });
});
