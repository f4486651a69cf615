import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultSettings } from '@/lib/matching/default-settings';
import { kindsOf } from '@/lib/matching/screen/kinds';
import { screenOf } from '@/lib/matching/screen/screen';
import { type Motor, motor as motorSchema } from '@/lib/plant/motor';
import { type PumpSet, set as setSchema } from '@/lib/plant/set';
import { demoPlant } from '@/seed/plant/plant';
import { judged, someList } from './plant-cases';

const passes = (set: PumpSet, motors: readonly Motor[]) =>
  new Set(screenOf(kindsOf(motors), defaultSettings)(set).flatMap(({ members }) => members));

test('what the screen drops the findings call unsuitable, whatever a plate or a place tells', () => {
  let dropped = 0;
  fc.assert(
    fc.property(someList, ({ set, candidates }) => {
      const passing = passes(set, candidates);
      for (const candidate of candidates) {
        if (passing.has(candidate)) continue;
        dropped += 1;
        expect(judged(set, candidate).verdict, `${candidate.id} for ${set.tag}`).toBe('unsuitable');
      }
    }),
    { seed: 7, numRuns: 400 },
  );
  expect(dropped).toBeGreaterThan(400);
});

test('one screen serves many sets: what it keeps for one kind of seat or supply holds for the others of the kind', () => {
  const plant = demoPlant({ seed: 3, sets: 200, spares: 90 });
  const plates = new Map(plant.motors.map(({ number, plate }) => [number, { id: number, ...plate }]));
  const motors = [...plates.values()].map((plate) => motorSchema.parse(plate));
  const sets = plant.sets.map(({ input, motor }) =>
    setSchema.parse({ ...input, failed: motor === null ? null : plates.get(motor) }),
  );
  const screen = screenOf(kindsOf(motors), defaultSettings);
  let dropped = 0;
  for (const set of sets) {
    const passing = new Set(screen(set).flatMap(({ members }) => members));
    for (const motor of motors) {
      if (passing.has(motor)) continue;
      dropped += 1;
      if (judged(set, motor).verdict !== 'unsuitable') expect.fail(`${motor.id} was dropped for ${set.tag}`);
    }
  }
  // Most of the hopeless are dropped: the screen is worth having.
  expect(dropped / (sets.length * motors.length)).toBeGreaterThan(0.8);
});

test('motors that differ only in number and shelf are one kind, and nothing else is', () => {
  const plate = motorSchema.parse({ id: 'A', frame: '184T', phases: 3, ratings: [{ volts: 460, hertz: 60, hp: 5 }] });
  const alike = { ...plate, id: 'B', spare: { ...plate.spare, shelvedOn: '2024-01-01' } };
  const other = { ...plate, id: 'C', ip: 'IP55' };
  expect(kindsOf([plate, other, alike]).map(({ members }) => members.map(({ id }) => id))).toEqual([['A', 'B'], ['C']]);
});
