import { describe, expect, test } from 'vitest';
import { deratingOf } from '@/lib/matching/context/derating';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import { frequency } from '@/lib/matching/criteria/supply/frequency';
import { fullLoadCurrent as currentFits } from '@/lib/matching/criteria/supply/full-load-current';
import { starting } from '@/lib/matching/criteria/supply/starting';
import { voltage } from '@/lib/matching/criteria/supply/voltage';
import { codeLetter } from '@/lib/standards/code-letter';
import { frequencyDerate } from '@/lib/standards/frequency-derate';
import { fullLoadCurrent } from '@/lib/standards/full-load-current';
import { currentOfCodeLetter, currentOfDesign } from '@/lib/standards/locked-rotor-current';
import { nominalVoltage } from '@/lib/standards/nominal-voltage';
import { unbalanceFactor } from '@/lib/standards/unbalance-factor';
import { kwOfHp } from '@/lib/units/power';
import { motor, set } from '../matching/easy';
import { asked } from '../matching/supply/asked';

// NFPA 70-2023 (NEC) Table 430.250, induction type, three-phase; the 2008 table agrees (read in two texts).
describe('NEC Table 430.250, full-load amps', () => {
  test.each([
    [0.5, 230, 2.2],
    [0.75, 460, 1.6],
    [1, 208, 4.6],
    [1.5, 575, 2.4],
    [2, 460, 3.4],
    [3, 200, 11],
    [5, 230, 15.2],
    [5, 460, 7.6],
    [7.5, 208, 24.2],
    [10, 460, 14],
    [15, 575, 17],
    [20, 230, 54],
    [25, 460, 34],
    [30, 200, 92],
    [40, 460, 52],
    [50, 575, 52],
    [60, 2300, 16],
    [75, 460, 96],
    [100, 230, 248],
    [125, 460, 156],
    [150, 208, 396],
    [200, 460, 240],
    [300, 460, 361],
    [500, 2300, 118],
  ])('%s hp at %s V: %s A', (hp, volts, amps) => {
    expect(fullLoadCurrent(3, kwOfHp(hp), volts)?.amps).toBe(amps);
  });

  test('3 hp and up have no 115 V column, and 400 V is not in the table', () => {
    expect(fullLoadCurrent(3, kwOfHp(3), 115)).toBeNull();
    expect(fullLoadCurrent(3, kwOfHp(5), 400)).toBeNull();
  });

  test('a kW plate finds its horsepower row: 3.7 kW is 5 hp', () => {
    expect(fullLoadCurrent(3, 3.7, 460)?.amps).toBe(7.6);
  });
});

// NFPA 70-2023 Table 430.248 (read in two texts).
test.each([
  [0.25, 115, 5.8],
  [0.5, 230, 4.9],
  [1, 115, 16],
  [1.5, 208, 11],
  [2, 230, 12],
  [5, 230, 28],
  [10, 230, 50],
])('NEC Table 430.248, single-phase: %s hp at %s V: %s A', (hp, volts, amps) => {
  expect(fullLoadCurrent(1, kwOfHp(hp), volts)?.amps).toBe(amps);
});

// NEC 2023 Table 430.251(B), designs B, C and D (read in one text; its 230 V column, MG 1-12.35, in two). The table rounds.
test.each([
  [0.5, 230, 20],
  [1, 460, 15],
  [3, 230, 64],
  [5, 460, 46],
  [7.5, 575, 50.8],
  [10, 200, 186.3],
  [15, 460, 116],
  [20, 208, 321],
  [25, 230, 365],
  [50, 460, 363],
  [100, 460, 725],
  [200, 575, 1160],
])('NEC Table 430.251(B), locked-rotor amps: %s hp at %s V: %s A', (hp, volts, amps) => {
  const found = currentOfDesign('B', kwOfHp(hp), volts)?.amps;
  expect((found ?? 0) / amps).toBeGreaterThan(0.993);
  expect((found ?? 9e9) / amps).toBeLessThan(1.007);
});

test('MG 1-12.35: design A has no ceiling on locked-rotor current (from memory)', () => {
  expect(currentOfDesign('A', kwOfHp(10), 230)).toBeNull();
});

// NEC Table 430.7(B), the same bands as MG 1-10.37.2 (read in two texts).
test.each([
  ['A', 0, 3.14],
  ['B', 3.15, 3.54],
  ['C', 3.55, 3.99],
  ['D', 4, 4.49],
  ['E', 4.5, 4.99],
  ['F', 5, 5.59],
  ['G', 5.6, 6.29],
  ['H', 6.3, 7.09],
  ['J', 7.1, 7.99],
  ['K', 8, 8.99],
  ['L', 9, 9.99],
  ['M', 10, 11.19],
  ['N', 11.2, 12.49],
  ['P', 12.5, 13.99],
  ['R', 14, 15.99],
  ['S', 16, 17.99],
  ['T', 18, 19.99],
  ['U', 20, 22.39],
  ['V', 22.4, null],
] as const)('NEC Table 430.7(B): letter %s is %s to %s kVA per hp', (letter, from, to) => {
  expect(codeLetter(letter)).toMatchObject({ from, to });
});

test('NEC 430.7(B), worked: 20 hp, 460 V, letter G takes at most 125.8 kVA, 158 A (read in one text)', () => {
  expect(currentOfCodeLetter('G', kwOfHp(20), 460, 3)?.amps).toBeCloseTo(158, 0);
});

test('the same letter single-phase has no root of three: 20 hp at 230 V, 125.8 kVA, 547 A (arithmetic)', () => {
  expect(currentOfCodeLetter('G', kwOfHp(20), 230, 1)?.amps).toBeCloseTo(547, 0);
});

// ANSI C84.1 service against MG 1 utilisation voltage; NEC Table 430.250 names the systems its columns serve (one text).
test.each([
  [120, 115, 'NEC 430.250'],
  [208, 200, 'forum of electricians (one text)'],
  [240, 230, 'NEC 430.250'],
  [480, 460, 'NEC 430.250'],
  [600, 575, 'NEC 430.250'],
  [2400, 2300, 'from memory'],
  [4160, 4000, 'from memory'],
])('a %s V system has %s V plates', (system, plate, _source) => {
  expect(nominalVoltage(system)?.plateVolts).toBe(plate);
});

// IEC 60038: European motors carry the voltage of the system itself (from memory).
test.each([400, 690, 230, 380, 415, 440])('%s V is no system with a lower plate of its own', (system) => {
  expect(nominalVoltage(system)).toBeNull();
});

const at = (system: number, plate: number, hertz: 50 | 60) =>
  asked(
    voltage,
    set({ supply: { volts: system, hertz } }),
    motor({ ratings: [{ volts: plate, hertz, kw: 4, rpm: hertz === 60 ? 1740 : 1440 }] }),
  )?.grade;

// MG 1-12.44.1: ±10 % runs (read in two texts). IEC 60034-1 zone A ±5 % (read in two), zone B ±10 % (read in one).
test.each([
  ['400 V plate on 420 V, +5 %, edge of zone A', 420, 400, 50, 'ok'],
  ['400 V plate on 380 V, −5 %, edge of zone A', 380, 400, 50, 'ok'],
  ['400 V plate on 415 V, +3.75 % (from memory)', 415, 400, 50, 'ok'],
  ['400 V plate on 440 V, edge of zone B', 440, 400, 50, 'check'],
  ['400 V plate on 360 V, edge of zone B', 360, 400, 50, 'check'],
  ['400 V plate on 441 V, outside zone B', 441, 400, 50, 'block'],
  ['380 V plate on 400 V, 5.3 %', 400, 380, 50, 'check'],
  ['230 V plate on 208 V: 207 V is its limit, no room for a drop (one text)', 208, 230, 60, 'check'],
  ['200 V plate on 240 V, +20 %: not allowed (from memory)', 240, 200, 60, 'block'],
  ['460 V plate on 480 V, by design', 480, 460, 60, 'ok'],
  ['575 V plate on 600 V, by design', 600, 575, 60, 'ok'],
  ['400 V plate on 690 V', 690, 400, 50, 'block'],
] as const)('voltage tolerance: %s', (_, system, plate, hertz, grade) => {
  expect(at(system, plate, hertz)).toBe(grade);
});

test('IEC 60034-1 zone A: 2 % of frequency is still the plate’s own (read in one text)', () => {
  const found = (hertz: number) =>
    asked(
      frequency,
      set({ supply: { volts: 400, hertz } }),
      motor({ ratings: [{ volts: 400, hertz: 50, kw: 4, rpm: 1440 }] }),
    )?.grade;
  expect([found(49), found(51), found(47)]).toEqual(['ok', 'ok', 'check']);
});

// MG 1-14.36 and Figure 14-1: a drawn curve, so read within 0.02 (tables read in one text, 2 % in two).
test.each([
  [0.5, 1],
  [1, 1],
  [1.5, 0.97],
  [2, 0.95],
  [2.5, 0.93],
  [3, 0.89],
  [4, 0.82],
  [5, 0.76],
])('unbalance of %s %% leaves %s of the power', (pct, factor) => {
  expect(Math.abs((unbalanceFactor(pct) ?? 0) - factor)).toBeLessThanOrEqual(0.02);
});

test('worked: 460, 467 and 450 V are 1.96 % out of balance; 10 hp becomes 9.5 hp (read in one text)', () => {
  expect(deratingOf(set({ supply: { unbalancePct: 1.96 } }), motor()).factor * 10).toBeCloseTo(9.5, 1);
});

// An application note on 60 Hz motors at 50 Hz (read in one text); its two worked examples.
test.each([
  ['10 hp asked, 380 V 50 Hz, closed: 12.5 hp', 'closed', 380, 10, 12.5],
  ['13 hp asked, 415 V 50 Hz, open: 17.3 hp', 'open', 415, 13, 17.3],
] as const)('60 Hz motor on 50 Hz: %s', (_, build, volts, asks, least) => {
  expect(asks / (frequencyDerate(build, volts / 460)?.share ?? 0)).toBeCloseTo(least, 1);
});

test('output at 50 Hz is never above five sixths of the 60 Hz plate (read in one text)', () => {
  expect(frequencyDerate('open', 380 / 460)?.share).toBeCloseTo(5 / 6, 9);
});

// V/f figures: a technical article (read in one text); 1.083 by arithmetic.
test.each([
  ['460 V 60 Hz on 415 V 50 Hz: 8.3 V/Hz against 7.67', 460, 60, 415, 50, 8.3 / 7.667],
  ['380 V 50 Hz at 60 Hz asks 456 V', 380, 50, 456, 60, 1],
  ['400 V 50 Hz at 60 Hz asks 480 V (from memory)', 400, 50, 480, 60, 1],
  ['400 V 50 Hz on 400 V 60 Hz: flux 5/6 (from memory)', 400, 50, 400, 60, 5 / 6],
])('flux: %s', (_, volts, hertz, lineVolts, lineHertz, phi) => {
  const candidate = motor({ ratings: [{ volts, hertz, kw: 7.5, rpm: 1440 }] });
  expect(ratingRowOf(set({ supply: { volts: lineVolts, hertz: lineHertz } }), candidate).phi).toBeCloseTo(phi, 3);
});

test('a 400 V 50 Hz motor on 460 V 60 Hz gives 1.15 of its power and turns 1.2 times as fast (from memory)', () => {
  const candidate = motor({ ratings: [{ volts: 400, hertz: 50, kw: 10, rpm: 1450 }] });
  const row = ratingRowOf(set({ supply: { volts: 460, hertz: 60 } }), candidate);
  expect(row.kw).toBeCloseTo(11.5, 9);
  expect(row.synchronousRpm).toBe(1800);
});

// Star-delta: a third of the current in the line, 1/√3 of it in each winding (from memory).
test('a star-delta start takes a third of the direct inrush', () => {
  const candidate = motor({
    codeLetter: 'G',
    winding: 'star-delta-6',
    ratings: [{ volts: 460, hertz: 60, hp: 20, rpm: 1765, amps: 24 }],
  });
  const grade = (instantaneousTripA: number) =>
    asked(starting, set({ supply: { start: 'star-delta', instantaneousTripA } }), candidate)?.grade;
  expect([grade(158 / 3 + 1), grade(158 / 3 - 1)]).toEqual(['ok', 'check']);
});

test('an overload in the delta carries 0.58 of the plate amps', () => {
  const candidate = motor({ ratings: [{ volts: 460, hertz: 60, hp: 20, rpm: 1765, amps: 100 }] });
  const supply = { start: 'star-delta', overloadIn: 'phase', overloadMinA: 57.8, overloadMaxA: 58.2 } as const;
  const found = asked(currentFits, set({ supply: { ...supply, contactorA: null, cableA: null } }), candidate);
  expect(found).toMatchObject({ grade: 'ok', says: expect.stringContaining('58 A') });
});

// Lead tables of an electrical handbook (read in one text): the voltages of a six-lead winding differ by √3.
test.each([
  [400, 690, 400, 'ok'],
  [230, 400, 230, 'ok'],
  [230, 400, 400, 'block'],
  [380, 660, 380, 'ok'],
  [265, 460, 460, 'block'],
])('a %s/%s V motor, star-delta on %s V', (low, high, line, grade) => {
  const row = { hertz: 50, kw: 4, rpm: 1440, amps: 8 };
  const ratings = [
    { ...row, volts: low },
    { ...row, volts: high },
  ];
  const candidate = motor({ frame: '112M', mounting: 'IM B3', leads: 6, ratings });
  const supply = { volts: line, hertz: 50, start: 'star-delta' } as const;
  expect(asked(starting, set({ supply }), candidate)?.grade).toBe(grade);
});

test('NEC 430.22: the conductor carries 125 % of the full-load current (from memory)', () => {
  const supply = { overloadMinA: null, overloadMaxA: null, contactorA: null };
  const candidate = motor({ ratings: [{ volts: 460, hertz: 60, hp: 10, rpm: 1760, amps: 14 }] });
  expect(asked(currentFits, set({ supply: { ...supply, cableA: 17.5 } }), candidate)?.grade).toBe('ok');
  expect(asked(currentFits, set({ supply: { ...supply, cableA: 17.4 } }), candidate)?.grade).toBe('check');
});
