import { describe, expect, test } from 'vitest';
import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { SET_FIELDS } from '@/lib/fields/set-fields';
import { type Edit, stateOf } from '@/lib/fields/state';
import { toldChanges } from '@/lib/fields/told-changes';
import { harrowmere } from '@/seed/plant/harrowmere';

const plant = harrowmere('2026-11-25');
const noName = () => null;
const told = (thing: string, before: Edit, after: Edit) => toldChanges(thing, before, after, 'metric', noName);

describe('a record that was entered is told in the labels of its form', () => {
  test('every motor of the demonstration', () => {
    const labels = MOTOR_FIELDS.map(({ label }) => label);
    for (const { number, plate } of plant.motors) {
      const { ratings, ...rest } = plate;
      const state = stateOf({
        ...rest,
        id: number,
        ratings: Object.fromEntries((ratings ?? []).map((row, i) => [i, row])),
      });
      const others = told('motor', {}, state).filter(
        ({ label }) => !labels.includes(label) && !/^Rating \d+, [a-z ]+$/.test(label),
      );
      expect(others, number).toEqual([]);
    }
  });

  test('every set of the demonstration', () => {
    const labels = SET_FIELDS.map(({ label }) => label);
    for (const { input } of plant.sets)
      expect(
        told('set', {}, stateOf(input)).filter(({ label }) => !labels.includes(label)),
        input.tag,
      ).toEqual([]);
  });
});

test.each<[string, string, Edit, Edit, [string, string | null, string | null][]]>([
  [
    'the hours of a kind of work',
    'site',
    { 'hours.slot-or-redrill': 2 },
    { 'hours.slot-or-redrill': 3 },
    [['Hours for slot or redrill', '2', '3']],
  ],
  ['a site’s price', 'site', { pricePerKwh: 0.14 }, { pricePerKwh: 0.2 }, [['Price of a kWh', '0.14', '0.2']]],
  [
    'where a motor went',
    'motor',
    { place: 'on-shelf' },
    { place: 'at-repair' },
    [['Where it is', 'on a shelf', 'at repair']],
  ],
  ['what a token may', 'token', {}, { scopes: ['read', 'write'] }, [['May', null, 'read, write']]],
  ['how many sessions ended', 'person', {}, { sessionsEnded: 2 }, [['Sessions ended', null, '2']]],
  ['a shelf that was left', 'motor', { shelfId: 'a' }, { shelfId: null }, [['Shelf', 'another', 'none']]],
  [
    'a retirement taken back',
    'shelf',
    { retiredAt: '2026-11-20T10:00:00Z' },
    { retiredAt: null },
    [['Retired', '2026-11-20', 'no more']],
  ],
  ['a verdict', 'set', {}, { verdict: 'swap-with-work' }, [['Judged', null, 'swap with work']]],
  ['a day', 'token', {}, { expiresAt: '2026-12-24T10:00:00.000Z' }, [['Until', null, '2026-12-24']]],
  [
    'a sum of bytes and an id without a name are left out',
    'motor',
    {},
    { sha256: 'ab', pictureId: 'x', faultId: 'y' },
    [],
  ],
  ['a field that has no words yet is spelled', 'site', {}, { 'newThing.soFar': 1 }, [['New thing, so far', null, '1']]],
])('%s', (_name, thing, before, after, expected) => {
  expect(told(thing, before, after).map(({ label, from, to }) => [label, from, to])).toEqual(expected);
});
