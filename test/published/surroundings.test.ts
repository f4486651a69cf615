import { describe, expect, test } from 'vitest';
import { areaClassification } from '@/lib/matching/criteria/surroundings/area-classification';
import { enclosure } from '@/lib/matching/criteria/surroundings/enclosure';
import type { Classification } from '@/lib/plant/classification';
import { areaShortfall, maxCOf } from '@/lib/standards/area-order';
import { enclosureMinimum } from '@/lib/standards/enclosure-minimum';
import { ipCovers } from '@/lib/standards/ip-covers';
import { minimumSheave } from '@/lib/standards/minimum-sheave';
import { kwOfHp } from '@/lib/units/power';
import { motor, set } from '../matching/easy';
import { asked } from '../matching/surroundings/asked';

// NEC 500.8(C)(4), greatest surface temperature in °C (read in two texts); T1 to T6 alone are those of IEC 60079-0.
test.each([
  ['T1', 450],
  ['T2', 300],
  ['T2A', 280],
  ['T2B', 260],
  ['T2C', 230],
  ['T2D', 215],
  ['T3', 200],
  ['T3A', 180],
  ['T3B', 165],
  ['T3C', 160],
  ['T4', 135],
  ['T4A', 120],
  ['T5', 100],
  ['T6', 85],
])('NEC 500.8: temperature code %s is %s °C', (code, maxC) => {
  expect(maxCOf(code)).toBe(maxC);
});

const ZONES = [0, 1, 2, 20, 21, 22] as const;

// ATEX 2014/34/EU Annex I and IEC 60079-0: EPL Ga, Gb, Gc, Da, Db, Dc and the zones each serves (read in two texts).
test.each([
  ['Ga', 0, [0, 1, 2]],
  ['Gb', 1, [1, 2]],
  ['Gc', 2, [2]],
  ['Da', 20, [20, 21, 22]],
  ['Db', 21, [21, 22]],
  ['Dc', 22, [22]],
] as const)('a motor of level %s, marked for zone %s, serves zones %s', (_, zone, serves) => {
  const iec = (of: (typeof ZONES)[number]): Classification => ({ scheme: 'IEC', zone: of, group: 'IIC', tempC: 85 });
  expect(ZONES.filter((place) => areaShortfall(iec(zone), iec(place)) === null)).toEqual([...serves]);
});

// IEC 60079-0 clause 4: IIC covers IIB and IIA, not the reverse (read in two texts); IIIA < IIIB < IIIC (from memory).
const GROUPS = ['IIA', 'IIB', 'IIC', 'IIIA', 'IIIB', 'IIIC'] as const;
test.each([
  ['IIA', ['IIA']],
  ['IIB', ['IIA', 'IIB']],
  ['IIC', ['IIA', 'IIB', 'IIC']],
  ['IIIA', ['IIIA']],
  ['IIIB', ['IIIA', 'IIIB']],
  ['IIIC', ['IIIA', 'IIIB', 'IIIC']],
] as const)('group %s covers %s', (group, covers) => {
  const of = (one: (typeof GROUPS)[number]): Classification => ({ scheme: 'IEC', zone: 1, group: one, tempC: 85 });
  expect(GROUPS.filter((place) => areaShortfall(of(group), of(place)) === null)).toEqual([...covers]);
});

describe('NEC 500.5 and 500.6', () => {
  const nec = (of: 1 | 2 | 3, division: 1 | 2, groups: ('A' | 'D' | 'E' | 'F' | 'G')[]): Classification => ({
    scheme: 'NEC',
    class: of,
    division,
    groups,
    tempCode: 'T4',
  });
  // Groups are listed one by one: read on the plate (from memory). Class III has no groups (read in one text).
  test.each([
    ['Division 1 serves Division 2', nec(1, 1, ['D']), nec(1, 2, ['D']), null],
    ['Division 2 does not serve Division 1', nec(1, 2, ['D']), nec(1, 1, ['D']), 'place'],
    ['gas is not dust', nec(1, 1, ['D']), nec(2, 1, ['G']), 'place'],
    ['acetylene (A) is not propane (D) unless listed', nec(1, 1, ['A']), nec(1, 1, ['D']), 'group'],
    ['metal dust (E) is not grain (G)', nec(2, 1, ['E']), nec(2, 1, ['G']), 'group'],
    ['coal and grain listed together serve grain', nec(2, 1, ['F', 'G']), nec(2, 1, ['G']), null],
    ['Class III asks no group', nec(3, 1, []), nec(3, 1, []), null],
  ] as const)('%s', (_, have, need, axis) => {
    expect(areaShortfall(have, need)?.axis ?? null).toBe(axis);
  });
});

test('a lower surface temperature satisfies a higher limit, never the reverse (read in two texts)', () => {
  const zone = (tempC: number): Classification => ({ scheme: 'IEC', zone: 2, group: 'IIA', tempC });
  expect(areaShortfall(zone(135), zone(200))).toBeNull();
  expect(areaShortfall(zone(200), zone(135))).toMatchObject({ kind: 'lower', axis: 'temperature' });
});

test('no mark, however good, is more than a check for a competent person (firm caution of every text read)', () => {
  const best: Classification = { scheme: 'IEC', zone: 0, group: 'IIC', tempC: 85 };
  const need: Classification = { scheme: 'IEC', zone: 2, group: 'IIA', tempC: 450 };
  const found = asked(
    areaClassification,
    set({ surroundings: { classification: need } }),
    motor({ classification: best }),
  );
  expect(found).toMatchObject({ grade: 'check', by: 'person' });
});

const water = (n: number | string) => `IPX${n}`;

// IEC 60529 clause 6 (read in two texts): up to 6 a numeral includes every lower one; 7 and 8 do not include 5 and 6.
test.each([0, 1, 2, 3, 4, 5, 6])('water numeral %s includes every lower one and no higher one', (n) => {
  for (let need = 0; need <= 9; need += 1)
    expect([need, ipCovers(water(n), water(need)).water]).toEqual([need, need <= n ? 'covers' : 'less']);
});

test.each([
  [7, 5, 'less', 'read in one text'],
  [7, 6, 'less', 'read in one text'],
  [8, 5, 'less', 'read in one text'],
  [8, 6, 'less', 'read in one text'],
  [7, 8, 'less', 'from memory'],
  [7, 7, 'covers', 'itself'],
  [8, 7, 'covers', 'from memory'],
  [7, 4, 'not-stated', 'not stated in the texts read'],
  [8, 4, 'not-stated', 'not stated in the texts read'],
  [9, 5, 'less', 'from memory'],
  [9, 6, 'less', 'from memory'],
  [9, 7, 'less', 'from memory'],
  [9, 8, 'less', 'from memory'],
  [9, 9, 'covers', 'itself'],
] as const)('water numeral %s for %s: %s', (have, need, answer, _source) => {
  expect(ipCovers(water(have), water(need)).water).toBe(answer);
});

// IEC 60529 table 1 (trade tables, read in one text).
test.each([0, 1, 2, 3, 4, 5, 6])('solids numeral %s includes every lower one and no higher one', (n) => {
  for (let need = 0; need <= 6; need += 1)
    expect([need, ipCovers(`IP${n}X`, `IP${need}X`).solids]).toEqual([need, need <= n ? 'covers' : 'less']);
});

test('X is not stated: neither zero nor enough (read in one text)', () => {
  expect(ipCovers('IPX5', 'IP55').solids).toBe('not-stated');
  expect(ipCovers('IP5X', 'IP55').water).toBe('not-stated');
  expect(ipCovers('IP5X', 'IP5X')).toEqual({ solids: 'covers', water: 'covers' });
});

// NEMA MG 1-1.25 to 1.27 words beside IEC 60034-5 degrees, in a motor maker's metric primer (read in one text); WP from memory.
test.each([
  ['ODP', 'IP22', false],
  ['TEFC', 'IP54', true],
  ['TENV', 'IP54', true],
  ['TEAO', 'IP54', true],
  ['TEBC', 'IP54', true],
  ['WPI', 'IP23', false],
  ['WP-II', 'IP24', false],
  ['XP', 'IP54', true],
])('%s promises at least %s', (word, atLeast, closed) => {
  expect(enclosureMinimum(word)).toMatchObject({ atLeast, closed });
});

// Cooling words: IC 410, 411, 416 and 418 of IEC 60034-6 (read in two texts; 416 in one).
test.each([
  ['TENV', 'surface'],
  ['TEFC', 'shaft'],
  ['TEBC', 'blower'],
  ['TEAO', 'machine'],
])('%s is cooled by its %s', (word, airFrom) => {
  expect(enclosureMinimum(word)?.airFrom).toBe(airFrom);
});

// IEC 60034-5: degrees usual on motors (from memory), asked by a place and brought by a plate.
test.each([
  ['IP55', 'IP55', 'ok'],
  ['IP55', 'IP54', 'block'],
  ['IP55', 'IP44', 'block'],
  ['IP54', 'IP56', 'ok'],
  ['IP23', 'IP22', 'block'],
  ['IP66', 'IP55', 'block'],
  ['IP66', 'IP67', 'block'],
])('a place of %s and a motor of %s: %s', (ip, have, grade) => {
  expect(asked(enclosure, set({ surroundings: { ip } }), motor({ ip: have }))?.grade).toBe(grade);
});

// NEMA MG 1-14.42, least V-belt pitch diameter in inches, by two fan and belt makers' sheets (read in one or two texts).
test.each([
  ['143T', 4, 1, 2.2],
  ['145T', 4, 2, 2.4],
  ['182T', 4, 3, 2.4],
  ['184T', 4, 5, 3],
  ['213T', 4, 7.5, 3],
  ['215T', 4, 10, 3.8],
  ['254T', 4, 15, 4.4],
  ['256T', 4, 20, 4.6],
  ['284T', 4, 25, 5],
  ['286T', 4, 30, 5.4],
  ['324T', 4, 40, 6],
  ['326T', 4, 50, 6.8],
  ['364T', 4, 60, 7.4],
  ['365T', 4, 75, 9],
  ['404T', 4, 100, 10],
  ['254T', 6, 7.5, 3.8],
  ['213T', 2, 10, 3],
])('MG 1-14.42: %s, %s poles, %s hp: %s in', (frame, poles, hp, inches) => {
  expect(minimumSheave(frame, poles, kwOfHp(hp))?.pitchMm).toBeCloseTo(inches * 25.4, 6);
});

test('MG 1-14.42 is not for short shafts: 284TS', () => {
  expect(minimumSheave('284TS', 4, kwOfHp(25))).toBeNull();
});
