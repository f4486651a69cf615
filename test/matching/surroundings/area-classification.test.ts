import { expect, test } from 'vitest';
import { areaClassification } from '@/lib/matching/criteria/surroundings/area-classification';
import type { MotorInput } from '@/lib/plant/motor';
import { motor, set } from '../easy';
import { asked } from './asked';

type Area = NonNullable<MotorInput['classification']>;

const dust = { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } as const satisfies Area;
const gas = { scheme: 'IEC', zone: 1, group: 'IIB', tempC: 200 } as const satisfies Area;
const grain = { scheme: 'NEC', class: 2, division: 1, groups: ['G'], tempCode: 'T4' } as const satisfies Area;
const vapour = { scheme: 'NEC', class: 1, division: 2, groups: ['D'], tempCode: 'T3' } as const satisfies Area;

const place = (classification: Area, supply: object = {}) => set({ surroundings: { classification }, supply });
const marked = (classification: Area | null, differs: object = {}) => motor({ classification, ...differs });

const ORDER = 'zones and categories, gas groups (read in two texts)';
const MEMORY = 'from memory';
const T_CODES = 'NEC 500.8(C)(4), T codes (read in two texts)';

test.each([
  ['dust, the same', dust, dust, 'check', ORDER],
  ['zone 21 for 22', dust, { ...dust, zone: 21 }, 'check', ORDER],
  ['zone 22 for 21', { ...dust, zone: 21 }, dust, 'block', ORDER],
  ['gas mark for dust', dust, { ...dust, zone: 2 }, 'block', ORDER],
  ['dust mark for gas', gas, { ...gas, zone: 21 }, 'block', ORDER],
  ['IIIC for IIIB', dust, { ...dust, group: 'IIIC' }, 'check', MEMORY],
  ['IIIA for IIIB', dust, { ...dust, group: 'IIIA' }, 'block', MEMORY],
  ['IIC for IIB', gas, { ...gas, group: 'IIC' }, 'check', ORDER],
  ['IIA for IIB', gas, { ...gas, group: 'IIA' }, 'block', ORDER],
  ['cooler', dust, { ...dust, tempC: 100 }, 'check', T_CODES],
  ['hotter', dust, { ...dust, tempC: 135 }, 'block', T_CODES],
  ['temperature not on the mark', dust, { ...dust, tempC: null }, 'check', MEMORY],
  ['temperature not stated for the place', { ...dust, tempC: null }, dust, 'check', MEMORY],
  ['group not on the mark', dust, { ...dust, group: null }, 'check', MEMORY],
  ['an unknown group does not hide a lower zone', { ...dust, zone: 21 }, { ...dust, group: null }, 'block', MEMORY],
  ['NEC mark in an IEC place', dust, grain, 'block', MEMORY],
  ['IEC mark in an NEC place', grain, dust, 'block', MEMORY],
  ['NEC, the same', grain, grain, 'check', MEMORY],
  ['Division 1 for 2', vapour, { ...vapour, division: 1 }, 'check', MEMORY],
  ['Division 2 for 1', grain, { ...grain, division: 2 }, 'block', MEMORY],
  ['another class', grain, { ...grain, class: 1 }, 'block', MEMORY],
  ['group not listed', grain, { ...grain, groups: ['E', 'F'] }, 'block', MEMORY],
  ['all groups listed', { ...grain, groups: ['F', 'G'] }, { ...grain, groups: ['E', 'F', 'G'] }, 'check', MEMORY],
  ['B is not taken to cover D', vapour, { ...vapour, groups: ['B'] }, 'block', MEMORY],
  ['no group on the mark', grain, { ...grain, groups: [] }, 'check', MEMORY],
  ['T3C (160 °C) for T4 (135 °C)', grain, { ...grain, tempCode: 'T3C' }, 'block', T_CODES],
  ['T4A (120 °C) for T4 (135 °C)', grain, { ...grain, tempCode: 'T4A' }, 'check', T_CODES],
  ['no T code on the mark', grain, { ...grain, tempCode: null }, 'check', MEMORY],
] as [string, Area, Area, string, string][])('a stated place: %s', (_, need, have, grade, _source) => {
  expect(asked(areaClassification, place(need), marked(have))).toMatchObject({
    grade,
    by: grade === 'check' ? 'person' : null,
  });
});

test('says both marks in words', () => {
  expect(asked(areaClassification, place(grain), marked(vapour))).toMatchObject({
    have: 'Class I, Division 2, group D, T3',
    need: 'Class II, Division 1, group G, T4',
    difference: null,
  });
});

const drive = { start: 'drive', drive: { outputVolts: 460, baseHertz: 60 } };

// A certificate holds for its own supply: IEC 60079-14, from memory.
test.each([
  ['re-rated to 50 Hz', { volts: 380, hertz: 50 }, {}, 'block'],
  ['on a drive, not declared for one', drive, { driveDuty: 'none' }, 'block'],
  ['on a drive, declared', drive, { driveDuty: 'inverter' }, 'check'],
  ['on a drive, not known', drive, { driveDuty: null }, 'check'],
  ['on the mains', {}, { driveDuty: 'none' }, 'check'],
])('the certificate: %s', (_, supply, differs, grade) => {
  expect(asked(areaClassification, place(dust, supply), marked(dust, differs))?.grade).toBe(grade);
});

const division2 = { ...grain, division: 2 } as const;

// NEC 501.125(B), 502.125(B), 503.125: from memory.
test.each([
  ['in a zone', dust, {}, 'block'],
  ['in Division 1', grain, {}, 'block'],
  ['a cage motor in Division 2', vapour, {}, 'check'],
  ['a closed cage motor among dust, Division 2', division2, {}, 'check'],
  ['an open one among dust, Division 2', division2, { enclosure: 'ODP', ip: null }, 'block'],
  ['an open one by its code', division2, { enclosure: null, ip: 'IP23' }, 'block'],
  ['an open one among vapour, Division 2', vapour, { enclosure: 'ODP', ip: null }, 'check'],
  ['a motor with a thermostat', vapour, { has: ['thermostat'] }, 'block'],
  ['a motor with a brake', vapour, { has: ['brake'] }, 'block'],
  ['a thermistor makes no spark', vapour, { has: ['thermistor'] }, 'check'],
  ['a wound rotor', vapour, { kind: 'wound-rotor' }, 'block'],
  ['a single-phase motor', vapour, { kind: 'single-phase', phases: 1 }, 'block'],
  ['a motor of unknown kind', vapour, { kind: null }, 'check'],
  ['an explosion-proof word whose mark is not recorded', grain, { enclosure: 'XP' }, 'check'],
] as [string, Area, object, string][])('without a mark: %s', (_, need, differs, grade) => {
  const found = asked(areaClassification, place(need), marked(null, differs));
  expect(found).toMatchObject({ grade, have: null, by: grade === 'check' ? 'person' : null });
});

test('an unmarked cage motor in Division 2 on a drive or at another frequency is still for a person, and told so', () => {
  expect(asked(areaClassification, place(vapour, drive), marked(null))).toMatchObject({
    grade: 'check',
    says: expect.stringContaining('drive'),
  });
  expect(asked(areaClassification, place(vapour, { volts: 380, hertz: 50 }), marked(null))).toMatchObject({
    grade: 'check',
    says: expect.stringContaining('another frequency'),
  });
});

/** Undefined: nobody has said. Null: a person called the place unclassified. */
const unsaid = (classification: null | undefined, had: Area | null, supply: object = {}) => ({
  ...set({ surroundings: { classification }, supply }),
  failed: marked(had),
});

test.each([undefined, null])('is not asked of a place that is %s where the failed motor had no mark', (said) => {
  expect(asked(areaClassification, unsaid(said, null), marked(null))).toBeNull();
  expect(asked(areaClassification, unsaid(said, null), marked(dust))).toBeNull();
  expect(asked(areaClassification, { ...unsaid(said, null), failed: null }, marked(null))).toBeNull();
});

test.each([undefined, null])('where the place is %s the failed motor’s mark is evidence', (said) => {
  const grade = (candidate: Area | null, had: Area = dust, supply: object = {}, differs: object = {}) =>
    asked(areaClassification, unsaid(said, had, supply), marked(candidate, differs))?.grade;
  expect(grade(dust)).toBe('ok');
  expect(grade(null)).toBe('check');
  expect(grade({ ...dust, tempC: 135 })).toBe('check');
  expect(grade({ ...dust, tempC: null })).toBe('check');
  expect(grade(grain)).toBe('check');
  expect(grade(dust, dust, { volts: 380, hertz: 50 })).toBe('check');
  expect(grade(dust, dust, drive, { driveDuty: 'none' })).toBe('check');
});

test('a place called unclassified whose failed motor was marked is told apart from one nobody has said', () => {
  expect(asked(areaClassification, unsaid(null, dust), marked(null))?.says).toContain('called unclassified');
  expect(asked(areaClassification, unsaid(undefined, dust), marked(null))?.says).not.toContain('called unclassified');
});
