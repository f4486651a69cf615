import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Units } from '@/lib/fields/field';
import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { ratingRows, readRatingRow } from '@/lib/fields/rating-cells';
import { cellName, readForm, shownIn, type Typed } from '@/lib/fields/read-form';
import { SET_FIELDS } from '@/lib/fields/set-fields';
import type { State } from '@/lib/fields/state';
import { stateOf } from '@/lib/fields/state';
import { harrowmere } from '@/seed/plant/harrowmere';
import { slowness } from '../yardstick';

const plant = harrowmere('2026-11-25');
const motors: [string, State][] = plant.motors.map(({ number, plate }) => [
  number,
  stateOf({ ...plate, id: number, ratings: Object.fromEntries((plate.ratings ?? []).map((row, i) => [i, row])) }),
]);
const sets: [string, State][] = plant.sets.map(({ input }) => {
  const { failed: _f, ...set } = input as typeof input & { failed?: unknown };
  return [input.tag, stateOf(set)];
});

/** Its plate tells 1850 rpm for 1750, which the page of doubts shows and no form takes. */
const MISTYPED = 'M-0521';

const motorForm = (state: State, typed: Typed, units: Units = 'metric') =>
  readForm(MOTOR_FIELDS, state, typed, units, { hasRatings: true });
const fromNothing = (typed: Typed, units: Units = 'metric') => motorForm({}, typed, units);

describe('what a record shows is read back as it is', () => {
  test('every motor of the demonstration, typed anew from what its form shows', () => {
    for (const [number, state] of motors) {
      const { edit, problems } = fromNothing(shownIn(MOTOR_FIELDS, state, 'metric', { hasRatings: true }));
      if (number === MISTYPED) {
        expect(problems.map(({ path }) => path)).toEqual(['ratings.0.rpm', 'ratings.1.rpm']);
        continue;
      }
      expect(problems, number).toEqual([]);
      expect(told(edit), number).toEqual(state);
    }
  });

  test('every set of the demonstration', () => {
    for (const [tag, state] of sets) {
      const typed = shownIn(SET_FIELDS, state, 'metric', { hasRatings: false });
      const { edit, problems } = readForm(SET_FIELDS, {}, typed, 'metric', { hasRatings: false });
      expect(problems, tag).toEqual([]);
      expect(told(edit), tag).toEqual(exact(state));
    }
  });

  test('what nobody touched is not changed, whatever units it was shown in', () => {
    for (const units of ['metric', 'us'] as const) {
      for (const [, state] of motors)
        expect(motorForm(state, shownIn(MOTOR_FIELDS, state, units, { hasRatings: true }), units)).toEqual({
          edit: {},
          problems: [],
        });
      for (const [, state] of sets)
        expect(
          readForm(SET_FIELDS, state, shownIn(SET_FIELDS, state, units, { hasRatings: false }), units, {
            hasRatings: false,
          }),
        ).toEqual({ edit: {}, problems: [] });
    }
  });

  test('lengths and masses typed in inches and pounds come out in mm and kg', () => {
    // 1 in = 25.4 mm, 1 lb = 0.45359237 kg: exact by definition (NIST SP 811, B.8).
    const typed = {
      'measured.shaftDiameterMm': '1-1/8',
      'measured.shaftHeightMm': '112 mm',
      massKg: '90',
      ambientC: '104',
    };
    const { edit, problems } = fromNothing(typed, 'us');
    expect(problems).toEqual([]);
    expect(edit['measured.shaftDiameterMm']).toBeCloseTo(28.575, 9);
    expect(edit['measured.shaftHeightMm']).toBe(112);
    expect(edit.massKg).toBe(40.82);
    expect(edit.ambientC).toBe(40);
  });
});

describe('ratings are read as they are stamped', () => {
  const row = (told: Partial<Record<string, string>>) =>
    Object.fromEntries(
      ['output', 'volts', 'hertz', 'rpm', 'amps', 'pf', 'eff', 'sf', 'connection'].map((cell) => [
        cell,
        told[cell] ?? '',
      ]),
    ) as Parameters<typeof readRatingRow>[0];

  test('7½ HP at 230/460 is two ratings, amps with their volts', () => {
    const { ratings, problems } = readRatingRow(
      row({ output: '7½ HP', volts: '230/460', hertz: '60', rpm: '1755', amps: '19.4/9.7', eff: '91.7' }),
    );
    expect(problems).toEqual([]);
    expect(ratings).toEqual([
      { hp: 7.5, volts: 230, hertz: 60, rpm: 1755, amps: 19.4, efficiencyPct: 91.7 },
      { hp: 7.5, volts: 460, hertz: 60, rpm: 1755, amps: 9.7, efficiencyPct: 91.7 },
    ]);
  });

  test.each([
    ['a power without its unit', { output: '7½' }, 'output'],
    ['a word for volts', { output: '5 hp', volts: 'many' }, 'volts'],
    ['a service factor of three', { output: '5 hp', sf: '3' }, 'sf'],
    ['one connection for two voltages', { output: '5 hp', volts: '230/460', connection: 'star' }, 'connection'],
    ['a connection that is none', { output: '5 hp', connection: 'zigzag' }, 'connection'],
  ])('%s is a problem at its cell', (_, told, cell) => {
    expect(readRatingRow(row(told)).problems.map((problem) => problem.cell)).toContain(cell);
  });

  test('a row that was taken out is gone, and the others move up', () => {
    const state = stateOf({ ratings: { 0: { volts: 230, hp: 5 }, 1: { volts: 460, hp: 5 } } });
    const [, second] = ratingRows(state);
    const typed = Object.fromEntries(
      Object.entries(second ?? {}).map(([cell, text]) => [cellName(0, cell as never), text]),
    );
    expect(told(motorForm(state, typed).edit)).toEqual({ 'ratings.0.volts': 460, 'ratings.0.hp': 5 });
    expect(motorForm(state, typed).edit['ratings.1.volts']).toBeNull();
  });
});

test('an emptied field is told no more, with all that it owns', () => {
  const state = stateOf({ frame: '184T', classification: { scheme: 'IEC', zone: 22, group: 'IIIB' } });
  expect(motorForm(state, { frame: '', classification: '' }).edit).toEqual({
    ...{
      frame: null,
      classification: null,
      'classification.scheme': null,
      'classification.zone': null,
      'classification.group': null,
    },
  });
});

test.each([
  ['poles', 'four'],
  ['spare.testedOn', '30.2.2026'],
  ['ambientC', '900'],
  ['has', 'brake,none'],
  ['classification', 'somewhere'],
  ['rotation', 'sideways'],
  ['measured.shaftDiameterMm', 'thick'],
])('%s of “%s” is a problem that names the field and what stood there', (path, text) => {
  const { problems } = fromNothing({ [path]: text });
  expect(problems).toHaveLength(1);
  expect(problems[0]?.path).toBe(path);
  expect(problems[0]?.says).toContain(`“${text}”`);
});

test('S5 whatever is typed, a form is read without a fault and at once', () => {
  const typed = fc.dictionary(
    fc.constantFrom(...MOTOR_FIELDS.map(({ path }) => path), 'ratings.0.output', 'ratings.0.volts', 'ratings.0.amps'),
    fc.string({ unit: 'grapheme', maxLength: 200 }),
  );
  fc.assert(
    fc.property(typed, (values) => {
      const { edit, problems } = fromNothing(values);
      for (const value of Object.values(edit)) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
      for (const { says } of problems) expect(says.length).toBeLessThan(600);
    }),
    { numRuns: 300 },
  );
  const long = '1/'.repeat(50_000);
  const before = performance.now();
  fromNothing(Object.fromEntries(MOTOR_FIELDS.map(({ path }) => [path, long])));
  expect(performance.now() - before).toBeLessThan(20_000 * slowness());
});

const told = (edit: object) => Object.fromEntries(Object.entries(edit).filter(([, value]) => value !== null));
/** Shaft powers of the demonstration were worked out, with what binary fractions leave. */
const exact = (state: State) =>
  Object.fromEntries(
    Object.entries(state).map(([path, value]) => [
      path,
      typeof value === 'number' ? Number(value.toPrecision(12)) : value,
    ]),
  );
