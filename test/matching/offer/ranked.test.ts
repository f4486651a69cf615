import { expect, test } from 'vitest';
import { assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Candidate } from '@/lib/matching/offer/candidate';
import { fittingOf, ranked } from '@/lib/matching/offer/ranked';
import { sieveOf } from '@/lib/matching/offer/sieve';
import { type Motor, motor as motorSchema } from '@/lib/plant/motor';
import { set as setSchema } from '@/lib/plant/set';
import { demoPlant } from '@/seed/plant/plant';

const DAY = '2026-11-25';
const plant = demoPlant({ seed: 11, sets: 12, spares: 120 });
const motors = plant.motors.map(({ number, plate }) => motorSchema.parse({ id: number, ...plate }));
const sets = plant.sets.map(({ input, motor }) => ({
  ...setSchema.parse(input),
  failed: motors.find(({ id }) => id === motor) ?? null,
}));
const inSets = new Set(plant.sets.map(({ motor }) => motor));
const shelved = motors.filter(({ id }) => !inSets.has(id));
const onShelf = (motor: Motor): Candidate => ({
  ...{ from: 'shelf', motor, condition: null, rewinds: null },
  at: { motorId: motor.id, plantNumber: motor.id, place: 'on-shelf', setTag: null, store: null, shelf: null },
});
const offered = shelved.map(onShelf);

test('the list is every motor judged by itself, without those that are unsuitable', () => {
  let some = 0;
  for (const set of sets) {
    const { fits } = ranked(set, offered, defaultSettings, DAY);
    const alone = shelved.flatMap((motor) => {
      const [result] = assess({ set, candidates: [motor], asOf: DAY }, defaultSettings).results;
      return result === undefined || result.verdict === 'unsuitable' ? [] : [result];
    });
    const told = new Map(fits.shelf.map(({ result }) => [result.id, result]));
    expect([...told.keys()].sort()).toEqual(alone.map(({ id }) => id).sort());
    for (const { id, verdict, hours, operatingPoint, findings } of alone)
      expect(told.get(id), `${id} for ${set.tag}`).toMatchObject({ verdict, hours, operatingPoint, findings });
    some += alone.length;
  }
  expect(some).toBeGreaterThan(20);
});

test('a sieve of more motors, kept from set to set, gives the same list and the same misses', () => {
  const sieve = sieveOf(motors, defaultSettings);
  for (const set of sets) {
    const { misses, ...fitting } = fittingOf(set, offered, defaultSettings, DAY, sieve);
    expect({ ...fitting, unsuitable: misses() }).toEqual(ranked(set, offered, defaultSettings, DAY));
  }
});
