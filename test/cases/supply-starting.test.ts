import { describe, expect, test } from 'vitest';
import { iec, isWellFormed, judged, near, nema, standing } from './whole-case';

/** A quadratic load that breaks away easily, so that the start's torque stands in nobody's way. */
const EASY = { kind: 'quadratic', breakawayPct: 20, staticHeadPct: 0 };
const row = (volts: number, connection: string | null, amps: number) => ({
  volts,
  hertz: 50,
  kw: 4,
  rpm: 1445,
  amps,
  connection,
});
const starDelta = (differs: { [key: string]: never } | object = {}) => ({
  supply: { start: 'star-delta', ...differs },
  load: EASY,
});

describe('star-delta on 400 V: delta at line voltage with both ends out', () => {
  const D400 = [row(400, 'delta', 8.1), row(690, 'star', 4.7)];
  const D230 = [row(230, 'delta', 14), row(400, 'star', 8.1)];
  const BARE400 = [row(400, null, 8.1), row(690, null, 4.7)];
  const BARE230 = [row(230, null, 14), row(400, null, 8.1)];
  const cases: [string, object, object, string][] = [
    ['400/690 with six leads', { ratings: D400 }, {}, 'ok'],
    ['a √3 pair, leads and winding not told', { ratings: BARE400, leads: null }, {}, 'ok'],
    ['a √3 pair on a NEMA frame', { ratings: BARE400, leads: null, frame: '184T', mounting: null }, {}, 'ok'],
    ['one delta row and six leads on an IEC motor', {}, {}, 'ok'],
    ['one delta row and six leads on a NEMA motor', { frame: '184T', mounting: null }, {}, 'check'],
    ['a declared star-delta winding', { winding: 'star-delta-6', leads: null }, {}, 'ok'],
    ['one delta row, leads not told', { leads: null }, {}, 'check'],
    ['a 230/400 motor, direct not stated', { ratings: D230 }, { directAllowed: null }, 'block'],
    ['a 230/400 motor, direct not allowed', { ratings: D230 }, { directAllowed: false }, 'block'],
    ['a 230/400 motor, direct allowed', { ratings: D230 }, { directAllowed: true }, 'work'],
    ['230/400 without connections', { ratings: BARE230 }, {}, 'block'],
    ['one star row', { ratings: [row(400, 'star', 8.1)] }, {}, 'block'],
    ['a declared winding, but in star at 400 V', { ratings: D230, winding: 'star-delta-6' }, {}, 'block'],
    ['nine leads', { leads: 9, winding: 'star-9', ratings: [row(400, null, 8.1)] }, {}, 'block'],
  ];
  test.each(cases)('%s', (_, motor, supply, grade) => {
    const found = judged(iec, { both: motor as never, set: starDelta(supply) as never });
    const starting = found.of('starting');
    expect(starting).toMatchObject({ grade, need: 'star-delta' });
    expect(starting?.work?.id ?? null).toBe(grade === 'work' ? 'rewire-starter' : null);
    if (grade === 'check') expect(starting).toMatchObject({ by: 'reading' });
    if (grade === 'ok') expect(standing(found)).toEqual([]);
    if (grade === 'work') expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 4 }); // 2 and 2 to rewire
    isWellFormed(found);
  });

  test('a twelve-lead star-delta motor on either of its voltages', () => {
    const ratings = [
      { volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 13.2 },
      { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 },
    ];
    for (const volts of [230, 460]) {
      const found = judged(nema, {
        both: { ratings, leads: 12, winding: 'star-delta-12' },
        set: { supply: { start: 'star-delta', volts }, load: EASY },
      });
      expect(found.of('starting'), `${volts} V`).toMatchObject({ grade: 'ok', have: 'star-delta-12' });
    }
  });
});

test('part-winding: the declared winding only', () => {
  const set = { supply: { start: 'part-winding' }, load: EASY };
  expect(judged(nema, { both: { winding: 'part-winding-6', leads: 6 }, set }).of('starting')?.grade).toBe('ok');
  const silent = judged(nema, { motor: { leads: 6 }, set });
  expect(silent.of('starting')).toMatchObject({ grade: 'check', need: 'part-winding', by: 'reading' });
  expect(judged(nema, { motor: { winding: 'star-9' }, set }).of('starting')?.grade).toBe('check');
  isWellFormed(silent);
});

describe('capacitors at the motor', () => {
  test('direct: resize or remove', () => {
    const found = judged(nema, { set: { supply: { capacitorKvar: 2 } } });
    expect(found.of('starting')).toMatchObject({ grade: 'work', work: { id: 'power-factor-capacitor', hours: 1 } });
    expect(found).toMatchObject({ verdict: 'swap-with-work', hours: 3 });
  });

  test.each(['soft', 'drive'])('%s: block until removed, and the removal is listed', (start) => {
    const drive = { ratedA: 10, overloadPct: 150, minHertz: 60, maxHertz: 60 };
    const supply = { start, softStartLimitPct: 400, drive: start === 'drive' ? drive : null, capacitorKvar: 2 };
    const found = judged(nema, { both: { driveDuty: 'inverter' }, set: { supply, load: EASY } });
    expect(found.of('starting')).toMatchObject({ grade: 'block', work: { id: 'power-factor-capacitor' } });
    expect(found.verdict).toBe('unsuitable');
    isWellFormed(found);
  });

  test('none: no work', () => {
    expect(judged(nema, { set: { supply: { capacitorKvar: 0 } } }).verdict).toBe('straight-swap');
  });
});

describe('inrush over the instantaneous trip', () => {
  // Code letter J: up to 7.99 kVA/hp; 7.99 × 5 × 1000 / (√3 × 460) = 50.14 A. At 480 V × 480/460 = 52.32 A.
  test.each([
    [460, 51, 'direct', 'ok', null],
    [460, 50, 'direct', 'check', 50.14],
    [480, 51, 'direct', 'check', 52.32],
    [480, 53, 'direct', 'ok', null],
  ])('code J on %i V, trip at %i A, %s: %s', (volts, instantaneousTripA, start, grade, amps) => {
    const found = judged(nema, { set: { supply: { volts, instantaneousTripA, start } } });
    const starting = found.of('starting');
    expect(starting?.grade).toBe(grade);
    if (amps !== null) {
      expect(starting).toMatchObject({
        have: near(amps, 1),
        need: instantaneousTripA,
        unit: 'A',
        difference: near(amps - instantaneousTripA, 1),
      });
      expect(found.verdict).toBe('check-first');
    }
    isWellFormed(found);
  });

  test('a soft starter holds it down', () => {
    const supply = { start: 'soft', softStartLimitPct: 400, instantaneousTripA: 30 };
    expect(judged(nema, { set: { supply, load: EASY } }).of('starting')?.grade).toBe('ok');
  });

  test('an IEC motor without a code letter: up to 9 × 8.1 = 72.9 A', () => {
    expect(judged(iec, { set: { supply: { instantaneousTripA: 70 } } }).of('starting')).toMatchObject({
      grade: 'check',
      have: near(72.9, 1),
      need: 70,
      unit: 'A',
    });
    expect(judged(iec, { set: { supply: { instantaneousTripA: 75 } } }).of('starting')?.grade).toBe('ok');
  });

  test('neither letter: a reading', () => {
    const found = judged(iec, { motor: { design: null }, set: { supply: { instantaneousTripA: 200 } } });
    expect(found.of('starting')).toMatchObject({ grade: 'check', have: null, need: 200, by: 'reading' });
  });
});

describe('kinds of motor', () => {
  const drive = { ratedA: 10, overloadPct: 150, minHertz: 60, maxHertz: 60 };
  test.each([
    ['permanent-magnet', 'direct', 'block'],
    ['permanent-magnet', 'soft', 'block'],
    ['permanent-magnet', 'drive', 'check'],
    ['reluctance', 'direct', 'block'],
    ['reluctance', 'star-delta', 'block'],
    ['reluctance', 'drive', 'check'],
    ['wound-rotor', 'star-delta', 'block'],
    ['wound-rotor', 'direct', 'check'],
    ['two-speed', 'direct', 'check'],
    ['two-speed', 'drive', 'check'],
    ['single-phase', 'soft', 'block'],
  ])('%s, %s start: %s', (kind, start, grade) => {
    const supply = { start, softStartLimitPct: 400, drive: start === 'drive' ? drive : null };
    const found = judged(nema, { motor: { kind }, set: { supply, load: EASY } });
    expect(found.of('starting')?.grade).toBe(grade);
    isWellFormed(found);
  });
});

test('delta at 460 V 60 Hz with the √3 pair printed at 50 Hz', () => {
  const ratings = [
    row(400, 'delta', 8.1),
    row(690, 'star', 4.7),
    { volts: 460, hertz: 60, kw: 4.6, rpm: 1745, amps: 8.1, connection: 'delta' },
  ];
  const set = { supply: { start: 'star-delta', volts: 460, hertz: 60 }, load: { ...EASY, atPumpRpm: 1745 } };
  expect(judged(iec, { both: { ratings, leads: null }, set }).of('starting')?.grade).toBe('ok');
  // Without the pair nothing shows both ends.
  expect(judged(iec, { motor: { ratings: ratings.slice(2), leads: null }, set }).of('starting')?.grade).toBe('check');
});

describe('inrush by other means', () => {
  test('star-delta takes a third: 72.9 / 3 = 24.3 A', () => {
    const at = (instantaneousTripA: number) =>
      judged(iec, { set: { supply: { start: 'star-delta', instantaneousTripA }, load: EASY } }).of('starting');
    expect(at(24)).toMatchObject({ grade: 'check', have: near(24.3, 4), need: 24, difference: near(0.3, 4) });
    expect(at(25)?.grade).toBe('ok');
  });

  test('design B without a code letter: 92 A at 230 V is 46 A at 460 V (MG 1 12.35)', () => {
    const at = (instantaneousTripA: number) =>
      judged(nema, { motor: { codeLetter: null }, set: { supply: { instantaneousTripA } } }).of('starting');
    expect(at(45)).toMatchObject({ grade: 'check', have: near(46, 4), need: 45 });
    expect(at(46)?.grade).toBe('ok');
  });

  test('single phase: 7.99 × 5 × 1000 / 230 = 173.7 A', () => {
    const both = {
      kind: 'single-phase',
      phases: 1,
      design: null,
      lockedRotorPct: 250,
      ratings: [{ volts: 230, hertz: 60, hp: 5, rpm: 1750, amps: 8.5 }],
    };
    const found = judged(nema, { both, set: { supply: { phases: 1, volts: 230, instantaneousTripA: 170 } } });
    expect(found.of('starting')).toMatchObject({ grade: 'check', have: near(173.7, 1), need: 170 });
  });

  test('a star motor that may start direct takes all of it', () => {
    const ratings = [row(230, 'delta', 14), row(400, 'star', 8.1)];
    const supply = { start: 'star-delta', directAllowed: true, instantaneousTripA: 70 };
    expect(judged(iec, { both: { ratings }, set: { supply, load: EASY } }).of('starting')).toMatchObject({
      grade: 'check',
      have: near(72.9, 4),
      need: 70,
      work: { id: 'rewire-starter' },
    });
  });
});
