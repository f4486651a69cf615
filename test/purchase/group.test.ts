import { describe, expect, test } from 'vitest';
import { buyable } from '@/lib/matching/buy/buyable';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet, PumpSetInput } from '@/lib/plant/set';
import { groupPurchase, specificationOf } from '@/lib/purchase/group/group-purchase';
import { easySet } from '../matching/buy/easy-set';
import { byId } from './asked';

const AS_OF = '2026-11-29';
const asked = (...sets: PumpSet[]) => groupPurchase(sets, defaultSettings, AS_OF);
const best = (...sets: PumpSet[]) => {
  const [option] = asked(...sets).options;
  if (option === undefined) throw new Error('no rating answers');
  return option;
};
const verdictsOf = (...sets: PumpSet[]) =>
  Object.fromEntries(best(...sets).served.map(({ tag, result }) => [tag, result.verdict]));
const linesOf = (...sets: PumpSet[]) => byId(specificationOf(sets, best(...sets), AS_OF));
const around = (surroundings: PumpSetInput['surroundings']) => ({
  surroundings: { ip: 'IP55', classification: null, ambientC: 40, ...surroundings },
});
const supply = { phases: 3, volts: 480, hertz: 60, start: 'direct' } as const;

describe('a group of one', () => {
  test('is offered what the set itself is offered', () => {
    const one = easySet();
    const ids = asked(one).options.map(({ motor }) => motor.id);
    expect(ids.sort()).toEqual(
      buyable(one)
        .map(({ id }) => id)
        .sort(),
    );
    for (const { motor } of asked(one).options) expect(buyable(one)).toContainEqual(motor);
    expect(best(one).contradictions).toEqual([]);
  });

  test('and twice the same set asks for no other motor', () => {
    expect(best(easySet(), easySet({ tag: 'P-2' })).motor).toEqual(best(easySet()).motor);
  });
});

describe('one motor for several sets is the strictest of what each asks', () => {
  const iec = (zone: 21 | 22, group: 'IIIB' | 'IIIC') => ({ scheme: 'IEC', zone, group, tempC: 125 }) as const;
  test.each<[string, Partial<PumpSetInput>, Partial<PumpSetInput>, Partial<Motor>]>([
    // IEC 60529: each numeral on its own, so that IP56 and IP65 are both covered by IP66 alone.
    ['the tighter enclosure, each numeral on its own', around({ ip: 'IP65' }), around({ ip: 'IP56' }), { ip: 'IP66' }],
    ['the hotter place', around({ ambientC: 50 }), around({ ambientC: 35 }), { ambientC: 50 }],
    ['washdown where one is washed', around({ washdown: true }), around({ washdown: false }), { washdown: 'painted' }],
    // IEC 60079-14: what suits Zone 21 suits Zone 22; IIIC covers IIIB.
    [
      'the area mark that covers both',
      around({ classification: iec(21, 'IIIC') }),
      around({ classification: iec(22, 'IIIB') }),
      { classification: iec(21, 'IIIC') },
    ],
    [
      'everything that any of them uses',
      { needs: ['heater'] },
      { needs: ['thermistor'] },
      { has: ['thermistor', 'heater'] },
    ],
    [
      'the least room and the least mass',
      { base: { maxLengthMm: 420, maxMassKg: 60 } },
      { base: { maxLengthMm: 500, maxMassKg: 50 } },
      { lengthMm: 420, massKg: 50 },
    ],
    [
      'the wider range on a drive',
      { supply: { ...supply, start: 'drive', drive: { minHertz: 10, maxHertz: 60 } } },
      { supply: { ...supply, start: 'drive', drive: { minHertz: 30, maxHertz: 72 } } },
      { constantTorqueRange: 6, driveDuty: 'inverter', maxRpm: 2160 }, // 60 / 10; 120 × 72 / 4
    ],
    ['inverter duty where one is on a drive', { supply: { ...supply, start: 'drive' } }, {}, { driveDuty: 'inverter' }],
    [
      'six ends where one starts in star',
      { supply: { ...supply, start: 'star-delta' } },
      { supply: { ...supply, start: 'star-delta' } },
      { winding: 'star-delta-6' },
    ],
  ])('%s', (_, one, other, motor) => {
    const option = best(easySet(one), easySet({ tag: 'P-2', ...other }));
    expect(option.motor).toMatchObject(motor);
    expect(option.contradictions).toEqual([]);
  });

  test('the power of the greatest load, and no more amps than the smallest contactor carries', () => {
    const small = easySet({
      tag: 'P-2',
      supply: { ...supply, contactorA: 6.2 },
      load: { kind: 'constant-torque', shaftKw: 2, atPumpRpm: 1750, breakawayPct: 100 },
    });
    const option = best(easySet(), small);
    expect(option.motor.ratings).toEqual([expect.objectContaining({ hp: 5, amps: 6.2 })]);
    expect(verdictsOf(easySet(), small)).toEqual({ 'P-1': 'straight-swap', 'P-2': 'straight-swap' });
    // Each set beside it: 2 kW needs 3 hp (2.24 kW) of the standard ratings, NEMA MG 1 Part 13.
    expect(linesOf(easySet(), small).power?.bySet).toEqual([
      { tag: 'P-1', value: '5 hp (3.73 kW)' },
      { tag: 'P-2', value: '3 hp (2.24 kW)' },
    ]);
  });

  test('feet and a face where one stands on feet and the other hangs on its face', () => {
    const hangs = easySet({ tag: 'P-2', mounting: 'face' }, { frame: '184TC', mounting: 'face' });
    expect(best(easySet(), hangs).motor).toMatchObject({ frame: '184TC', mounting: 'foot and face' });
    expect(best(easySet(), hangs).contradictions).toEqual([]);
  });

  // NEMA MG 1 Part 30/31 apart: 230 / 460 V is one winding in parallel or series; 400 V 50 Hz and 460 V 60 Hz differ by 4 % in volts over hertz.
  test.each<[string, Partial<PumpSetInput>, (number | null)[]]>([
    ['230 and 460 V', { supply: { ...supply, volts: 240 } }, [460, 230]],
    ['208 and 460 V are no such pair', { supply: { ...supply, volts: 208 } }, [460]],
  ])('two voltages on one plate: %s', (_, other, volts) => {
    const option = best(easySet({}, null), easySet({ tag: 'P-2', ...other }, null));
    expect(option.motor.ratings.map((row) => row.volts)).toEqual(volts);
    expect(linesOf(easySet({}, null), easySet({ tag: 'P-2', ...other }, null)).supply?.value).toBe(
      `3 × ${volts.map((one) => `${one} V, 60 Hz`).join(' and ')}`,
    );
    expect(option.contradictions.map(({ id }) => id)).toEqual(volts.length === 1 ? ['supply'] : []);
  });
});

test('of two supplies each has its amps', () => {
  // NEC Table 430.250, 5 hp: 7.6 A at 460 V, 15.2 A at 230 V.
  const lines = linesOf(easySet({}, null), easySet({ tag: 'P-2', supply: { ...supply, volts: 240 } }, null));
  expect(lines.amps?.value).toBe('7.6 A at 460 V, 60 Hz; 15.2 A at 230 V, 60 Hz');
});

test('the order of the sets changes nothing of what is asked', () => {
  const sets = [
    easySet({ needs: ['heater'], surroundings: { ip: 'IP65', ambientC: 50, classification: null } }),
    easySet({ tag: 'P-2', needs: ['thermistor'], base: { maxMassKg: 60 } }),
    easySet({ tag: 'P-3', supply: { ...supply, volts: 240, contactorA: 40 } }, null),
  ];
  expect(best(...sets.toReversed()).motor).toEqual(best(...sets).motor);
});

describe('what no one motor can be is told with the sets', () => {
  test('two and four poles', () => {
    const fast = easySet(
      { tag: 'P-2', load: { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 3500, breakawayPct: 100 } },
      { poles: 2, ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 3500, amps: 6 }] },
    );
    const option = best(easySet(), fast);
    const other = option.motor.poles === 4 ? 'P-2' : 'P-1';
    expect(option.contradictions).toContainEqual({
      ...{ id: 'poles', label: 'Poles', askedAs: String(option.motor.poles) },
      bySet: [
        { tag: 'P-1', value: '4' },
        { tag: 'P-2', value: '2' },
      ],
    });
    expect(verdictsOf(easySet(), fast)[other]).toBe('unsuitable');
  });

  test.each<[string, Partial<PumpSetInput>, Partial<PumpSetInput>, string]>([
    // IEC 60529: 8 does not include the jets of 5 and 6.
    ['jets and immersion', around({ ip: 'IP66' }), around({ ip: 'IP68' }), 'enclosure'],
    [
      'two schemes of classification',
      around({ classification: { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } }),
      around({ classification: { scheme: 'NEC', class: 2, division: 2, groups: ['G'], tempCode: 'T4' } }),
      'area',
    ],
    ['cables from two sides', { base: { cableEntry: 'left' } }, { base: { cableEntry: 'right' } }, 'terminal-box'],
    [
      'two ways to start by a winding',
      { supply: { ...supply, start: 'star-delta' } },
      { supply: { ...supply, start: 'part-winding' } },
      'connection',
    ],
    ['two positions', {}, { shaftDirection: 'down' }, 'mounting'],
  ])('%s', (_, one, other, id) => {
    const { contradictions } = best(easySet(one), easySet({ tag: 'P-2', ...other }));
    const found = contradictions.find((noted) => noted.id === id);
    expect(found?.bySet.map(({ tag }) => tag)).toEqual(['P-1', 'P-2']);
    expect(found?.bySet.map(({ value }) => value)).toContain(found?.askedAs);
  });

  test('it is asked as most have it', () => {
    const left = { base: { cableEntry: 'left' } } as const;
    const right = { base: { cableEntry: 'right' } } as const;
    const option = best(easySet(right), easySet({ tag: 'P-2', ...left }), easySet({ tag: 'P-3', ...left }));
    expect(option.motor.terminalBox).toBe('left');
  });
});

test('what one set does not tell stays to be told for it, and the others’ stands', () => {
  const lines = linesOf(easySet(around({ ambientC: 50 })), easySet({ tag: 'P-2', surroundings: {} }));
  expect(lines.ambient).toMatchObject({
    value: '50 °C',
    bySet: [
      { tag: 'P-1', value: '50 °C' },
      { tag: 'P-2', value: null },
    ],
  });
});

test.each([
  ['area', around({ classification: null }), { surroundings: { ip: 'IP55', ambientC: 40 } }],
  ['certificates', around({ classification: null }), { surroundings: { ip: 'IP55', ambientC: 40 } }],
  ['washdown', around({ washdown: false }), around({})],
  ['drive', {}, { supply: { phases: 3, volts: 480, hertz: 60 } }],
] as const)('that nothing is asked (%s) is said only where every set tells it', (id, told, untold) => {
  expect(linesOf(easySet(told), easySet({ tag: 'P-2', ...told }))[id]?.value).toEqual(expect.any(String));
  for (const sets of [
    [easySet(told), easySet({ tag: 'P-2', ...untold })],
    [easySet(untold), easySet({ tag: 'P-2', ...told })],
  ])
    expect(linesOf(...sets)[id]?.value).toBeNull();
});

describe('a limit of several sets is the strictest of theirs', () => {
  const trip = (instantaneousTripA: number) => ({ supply: { ...supply, instantaneousTripA } });
  const high = (altitudeM: number) => around({ altitudeM });
  const load = (shaftKw: number) => ({
    load: { kind: 'constant-torque', shaftKw, atPumpRpm: 1750, breakawayPct: 100 } as const,
  });
  test.each<[string, Partial<PumpSetInput>, Partial<PumpSetInput>, string]>([
    ['load', load(2), load(3.1), '3.1 kW'],
    ['inrush', trip(120), trip(80), '80 A'],
    ['altitude', high(200), high(1400), '1400 m'],
  ])('%s', (id, one, other, value) => {
    expect(linesOf(easySet(one), easySet({ tag: 'P-2', ...other }))[id]?.value).toBe(value);
    expect(linesOf(easySet(other), easySet({ tag: 'P-2', ...one }))[id]?.value).toBe(value);
  });

  test('and its reason is that of the set that asks it', () => {
    const roomy = easySet({ supply: { ...supply, contactorA: 20 } });
    const tight = easySet({ tag: 'P-2', supply: { ...supply, contactorA: 6.2 } });
    for (const sets of [
      [roomy, tight],
      [tight, roomy],
    ])
      expect(linesOf(...sets).amps).toMatchObject({ value: '6.2 A', why: 'the contactor carries 6.2 A' });
  });
});

test('a set that no standard rating answers is named, and judged all the same', () => {
  const single = easySet({ tag: 'P-2', supply: { phases: 1, volts: 230, hertz: 60 } }, null);
  const { unanswered, options } = asked(easySet(), single);
  expect(unanswered).toEqual(['P-2']);
  expect(options[0]?.served.find(({ tag }) => tag === 'P-2')?.result.verdict).toBe('unsuitable');
});

test('where nothing answers there are no options', () => {
  expect(asked(easySet({ load: {} }, null))).toEqual({ options: [], unanswered: ['P-1'] });
});
