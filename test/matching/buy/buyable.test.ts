import { describe, expect, test } from 'vitest';
import { assess } from '@/lib/matching/assess';
import { buyable } from '@/lib/matching/buy/buyable';
import { defaultSettings } from '@/lib/matching/default-settings';
import { easySet } from './easy-set';

const offered = (one: ReturnType<typeof easySet>) => buyable(one).map(({ id }) => id);

describe('what could be bought', () => {
  // Frames: NEMA MG 1-2016 Part 13, TEFC; EN 50347 Table 7.
  test.each<[string, ReturnType<typeof easySet>, string[]]>([
    [
      'the least power that carries the load, and the next ones',
      easySet(),
      ['184T 5 hp 4-pole', '213T 7.5 hp 4-pole', '215T 10 hp 4-pole'],
    ],
    [
      "the failed motor's size too, where less would do",
      easySet({ load: { kind: 'constant-torque', shaftKw: 2, atPumpRpm: 1750 } }),
      ['184T 5 hp 4-pole', '182T 3 hp 4-pole', '213T 7.5 hp 4-pole'],
    ],
    [
      'a C-face where the place asks for a face',
      easySet({ mounting: 'face' }, { frame: '184TC', mounting: 'face' }),
      ['184TC 5 hp 4-pole', '213TC 7.5 hp 4-pole', '215TC 10 hp 4-pole'],
    ],
    [
      'a T frame for a motor of the 1952 series',
      easySet({}, { frame: '215U', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1745 }] }),
      ['184T 5 hp 4-pole', '213T 7.5 hp 4-pole', '215T 10 hp 4-pole'],
    ],
    [
      'IEC frames for an IEC motor, by flange and direction',
      easySet(
        {
          mounting: 'face',
          shaftDirection: 'down',
          supply: { phases: 3, volts: 400, hertz: 50 },
          load: { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 1440 },
        },
        {
          frame: '112M',
          mounting: 'IM V1',
          design: 'N',
          ratings: [{ volts: 400, hertz: 50, kw: 4, rpm: 1440, amps: 8.1 }],
        },
      ),
      ['112M 4 kW 4-pole', '132S 5.5 kW 4-pole', '132M 7.5 kW 4-pole'],
    ],
    [
      'nothing single-phase: no standard assigns those frames',
      easySet({ supply: { phases: 1, volts: 230, hertz: 60 } }),
      [],
    ],
    [
      'nothing where nobody told a power',
      easySet({ load: {} }, { ratings: [{ volts: 460, hertz: 60, rpm: 1750 }] }),
      [],
    ],
    [
      'nothing beyond the tables',
      easySet({ load: { kind: 'constant-torque', shaftKw: 9000, atPumpRpm: 1750 } }, null),
      [],
    ],
  ])('%s', (_, one, ids) => {
    expect([...offered(one)].sort()).toEqual([...ids].sort());
  });

  test('the like size is a straight swap, judged as any candidate', () => {
    const one = easySet();
    const { results } = assess({ set: one, candidates: buyable(one), asOf: null }, defaultSettings);
    expect(results[0]).toMatchObject({ id: '184T 5 hp 4-pole', verdict: 'straight-swap' });
  });

  test('a dusty place asks for its mark, a heater and a hot room too', () => {
    const zone = { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } as const;
    const one = easySet({
      needs: ['heater'],
      surroundings: { ip: 'IP66', washdown: true, ambientC: 50, classification: zone },
    });
    for (const asked of buyable(one))
      expect(asked).toMatchObject({
        classification: zone,
        ip: 'IP66',
        ambientC: 50,
        has: ['heater'],
        washdown: 'painted',
      });
  });

  test('what nobody tells stays unknown and is never made up', () => {
    // A pump told to turn at the speed of the field tells no slip.
    const load = { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 1800 } as const;
    const offers = buyable(easySet({ surroundings: {}, load }, null));
    expect(offers.length).toBeGreaterThan(0);
    for (const asked of offers) {
      expect(asked.ratings[0]?.rpm).toBeNull();
      expect(asked).toMatchObject({ classification: null, lengthMm: null, massKg: null, lockedRotorPct: null });
    }
  });
});

const verdictOf = (one: ReturnType<typeof easySet>, id: string) =>
  assess({ set: one, candidates: buyable(one), asOf: null }, defaultSettings).results.find(
    (result) => result.id === id,
  );
const askedIn = (one: ReturnType<typeof easySet>, id: string) => {
  const asked = buyable(one).find((motor) => motor.id === id);
  if (asked === undefined) throw new Error(`${id} is not among ${offered(one)}`);
  return asked;
};

describe('what is asked for is what the set is judged by', () => {
  const drive = { phases: 3, volts: 480, hertz: 60, start: 'drive' } as const;
  test.each<[string, ReturnType<typeof easySet>, object, string]>([
    [
      'limits of length and mass are figures that it may reach',
      easySet({ base: { maxLengthMm: 420, maxMassKg: 50 } }),
      { lengthMm: 420, massKg: 50 },
      'straight-swap',
    ],
    [
      'a motor with face and feet is asked so in words',
      easySet({ mounting: 'foot-and-face' }, { frame: '184TC', mounting: 'foot and face' }),
      { frame: '184TC', mounting: 'foot and face' },
      'straight-swap',
    ],
    [
      // IEC 60034-7: V18 is a face with tapped holes, shaft down; a NEMA C-face has tapped holes (MG 1 4.4.4).
      'an upright C-face motor is asked by its code',
      easySet({ mounting: 'face', shaftDirection: 'down' }, { frame: '184TC', mounting: 'face' }),
      { frame: '184TC', mounting: 'IM V18' },
      'straight-swap',
    ],
    [
      // 120 × 66 / 4 = 1980 rpm.
      'where the drive goes above its base, the highest speed is asked',
      easySet({
        supply: { ...drive, drive: { minHertz: 20, maxHertz: 66, baseHertz: 60, ratedA: 10, overloadPct: 150 } },
      }),
      { maxRpm: 1980, constantTorqueRange: 3, driveDuty: 'inverter' },
      'swap-with-work',
    ],
    [
      'without a plate the speed is the one that the pump asks',
      easySet(
        { mounting: 'face', seat: { face: '184TC' }, coupling: { type: 'coupling', hub: { boreMm: 28.575 } } },
        null,
      ),
      { ratings: [expect.objectContaining({ rpm: 1750 })] },
      'check-first',
    ],
  ])('%s', (_, one, asked, verdict) => {
    const [id] = offered(one).filter((id) => id.includes(' 5 hp'));
    expect(askedIn(one, String(id))).toMatchObject(asked);
    expect(verdictOf(one, String(id))?.verdict).toBe(verdict);
  });

  // 5 hp at 460 V: 3.73 kW / (√3 × 460 V) is 4.7 kVA-amps at a yield of 1; a table for sizing circuits prints 7.6 A.
  test.each<[string, number | null, number | null]>([
    ['no plate and no contactor: the table of the code, NEC 430.250', null, 7.6],
    ['a contactor that carries less than the table: what it carries', 7, 7],
    ['a contactor too small for any motor of this power changes nothing', 3, 7.6],
  ])('amps at most: %s', (_, contactorA, amps) => {
    const one = easySet({ supply: { phases: 3, volts: 480, hertz: 60, start: 'direct', contactorA } }, null);
    expect(askedIn(one, '184T 5 hp 4-pole').ratings[0]?.amps).toBe(amps);
  });

  test('a pump that breaks away hard asks for torque by its figure, a 20 % margin above', () => {
    // Design B, 5 hp, 4 poles: 185 % (MG 1 12.38.1). Load 2.9 kW at 1750 rpm is 15.8 N·m, the motor 20.3 N·m:
    // 1.2 × 220 % × 15.8 / (20.3 × (480 / 460)²) is 189 %, torque being as the square of the volts (MG 1 12.44).
    const one = easySet({ load: { kind: 'constant-torque', shaftKw: 2.9, atPumpRpm: 1750, breakawayPct: 220 } });
    expect(askedIn(one, '184T 5 hp 4-pole')).toMatchObject({ design: 'B', lockedRotorPct: 190 });
    expect(verdictOf(one, '184T 5 hp 4-pole')?.verdict).toBe('straight-swap');
    expect(askedIn(easySet(), '184T 5 hp 4-pole').lockedRotorPct).toBeNull();
  });

  test('a torque beyond every design letter is not asked, and the judgement says why', () => {
    const one = easySet({ load: { kind: 'constant-torque', shaftKw: 3.5, atPumpRpm: 1750, breakawayPct: 400 } });
    expect(askedIn(one, '184T 5 hp 4-pole').lockedRotorPct).toBeNull();
    expect(verdictOf(one, '184T 5 hp 4-pole')?.verdict).toBe('unsuitable');
  });

  test('a plate is asked for the nominal system, whatever was measured there', () => {
    const one = easySet({ supply: { phases: 3, volts: 480, measuredVolts: 471, hertz: 60, start: 'direct' } });
    expect(askedIn(one, '184T 5 hp 4-pole').ratings[0]?.volts).toBe(460); // NEC Table 430.250
  });
});
