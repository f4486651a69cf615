import { describe, expect, test } from 'vitest';
import { assess } from '@/lib/matching/assess';
import { buyable } from '@/lib/matching/buy/buyable';
import { purchaseSpecification } from '@/lib/matching/buy/purchase-specification';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { MotorInput } from '@/lib/plant/motor';
import { type PumpSetInput, set } from '@/lib/plant/set';

const FAILED: MotorInput = {
  id: 'M-1',
  kind: 'cage',
  frame: '184T',
  phases: 3,
  poles: 4,
  design: 'B',
  ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }],
  enclosure: 'TEFC',
  ip: 'IP55',
};
const place = (differs: Partial<PumpSetInput> = {}, failed: Partial<MotorInput> | null = {}) =>
  set.parse({
    tag: 'P-1',
    mounting: 'foot',
    shaftDirection: 'horizontal',
    failed: failed === null ? null : { ...FAILED, ...failed },
    coupling: { type: 'coupling' },
    supply: { phases: 3, volts: 480, hertz: 60, start: 'direct' },
    load: { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 1750, breakawayPct: 100 },
    surroundings: { ip: 'IP55', classification: null, ambientC: 40 },
    ...differs,
  });
const offered = (one: ReturnType<typeof place>) => buyable(one).map(({ id }) => id);

describe('what could be bought', () => {
  // Frames: NEMA MG 1-2016 Part 13, TEFC; EN 50347 Table 7.
  test.each<[string, ReturnType<typeof place>, string[]]>([
    [
      'the least power that carries the load, and the next ones',
      place(),
      ['184T 5 hp 4-pole', '213T 7.5 hp 4-pole', '215T 10 hp 4-pole'],
    ],
    [
      "the failed motor's size too, where less would do",
      place({ load: { kind: 'constant-torque', shaftKw: 2, atPumpRpm: 1750 } }),
      ['184T 5 hp 4-pole', '182T 3 hp 4-pole', '213T 7.5 hp 4-pole'],
    ],
    [
      'a C-face where the place asks for a face',
      place({ mounting: 'face' }, { frame: '184TC', mounting: 'face' }),
      ['184TC 5 hp 4-pole', '213TC 7.5 hp 4-pole', '215TC 10 hp 4-pole'],
    ],
    [
      'a T frame for a motor of the 1952 series',
      place({}, { frame: '215U', ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1745 }] }),
      ['184T 5 hp 4-pole', '213T 7.5 hp 4-pole', '215T 10 hp 4-pole'],
    ],
    [
      'IEC frames for an IEC motor, by flange and direction',
      place(
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
      place({ supply: { phases: 1, volts: 230, hertz: 60 } }),
      [],
    ],
    ['nothing where nobody told a power', place({ load: {} }, { ratings: [{ volts: 460, hertz: 60, rpm: 1750 }] }), []],
    [
      'nothing beyond the tables',
      place({ load: { kind: 'constant-torque', shaftKw: 9000, atPumpRpm: 1750 } }, null),
      [],
    ],
  ])('%s', (_, one, ids) => {
    expect([...offered(one)].sort()).toEqual([...ids].sort());
  });

  test('the like size is a straight swap, judged as any candidate', () => {
    const one = place();
    const { results } = assess({ set: one, candidates: buyable(one), asOf: null }, defaultSettings);
    expect(results[0]).toMatchObject({ id: '184T 5 hp 4-pole', verdict: 'straight-swap' });
  });

  test('a dusty place asks for its mark, a heater and a hot room too', () => {
    const zone = { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } as const;
    const one = place({
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
    const one = place({ surroundings: {} }, null);
    for (const asked of buyable({ ...one, load: { ...one.load, kind: null } })) {
      expect(asked.ratings[0]?.rpm).toBeNull();
      expect(asked.classification).toBeNull();
    }
  });
});

describe('the purchase specification', () => {
  const demands = (one: ReturnType<typeof place>) => {
    const [asked] = buyable(one);
    if (asked === undefined) throw new Error('nothing could be bought');
    const groups = purchaseSpecification(one, asked);
    return Object.fromEntries(groups.flatMap(({ demands }) => demands.map(({ label, value }) => [label, value])));
  };

  test('tells a supplier rating, frame, shaft and surroundings', () => {
    expect(demands(place())).toMatchObject({
      Power: '5 hp (3.73 kW)',
      Poles: '4',
      'Full-load speed': '1750 rpm',
      'Phases, volts, hertz': '3 × 460 V, 60 Hz',
      'Full-load amps, at most': '6.6 A',
      Frame: '184T',
      'Shaft height': '114.3 mm', // NEMA MG 1-2016 4.4.1: 4.50 in
      Face: 'none',
      Enclosure: 'IP55',
      'Hazardous area': 'unclassified',
    });
  });

  test('asks for no brake where the failed motor had none', () => {
    expect(Object.keys(demands(place()))).not.toContain('Brake coil');
  });

  test('leaves open what nobody told', () => {
    const open = demands(place({ surroundings: {}, shaftDirection: null }));
    expect(open).toMatchObject({ 'Hazardous area': null, Altitude: null, Position: null, 'Length, at most': null });
  });
});
