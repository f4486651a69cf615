import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { VERDICTS } from '@/lib/matching/verdict';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type Cover, coverOf } from '@/lib/spares/cover/cover';
import { motor, set } from '../../matching/easy';
import { somePlant } from './plants';

/** For each set, as text, the plant numbers that could go in, with verdict and hours. */
function told({ sets, kinds }: Cover): Map<string, string[]> {
  return new Map(
    [...sets].map(([id, { serves }]) => [
      id,
      serves
        .flatMap(({ kind, fit }) => (kinds.get(kind) ?? []).map((one) => `${one.id} ${fit.verdict} ${fit.hours}`))
        .sort(),
    ]),
  );
}

/** The same by the whole judgement of each pair. */
function assessed(sets: ReadonlyMap<string, { set: PumpSet }>, shelf: readonly Motor[]) {
  return new Map(
    [...sets].map(([id, { set }]) => [
      id,
      assess({ set, candidates: [...shelf], asOf: null }, defaultSettings)
        .results.filter(({ verdict }) => verdict !== 'unsuitable')
        .map((one) => `${one.id} ${one.verdict} ${one.hours}`)
        .sort(),
    ]),
  );
}

describe('the cover of a plant', () => {
  test.each([3, 8, 21])('is the verdict of every pair by the whole judgement, seed %i', (seed) => {
    const { sets, shelf } = somePlant({ seed, sets: 60, spares: 90 });
    const covered = told(coverOf(sets, shelf, defaultSettings));
    expect(covered).toEqual(assessed(sets, shelf));
    expect(new Set([...covered.values()].flat().map((one) => one.split(' ')[1]))).toEqual(
      new Set(VERDICTS.filter((verdict) => verdict !== 'unsuitable')),
    );
  });

  test('counts no motor whose winding reads too low, and names it', () => {
    // Below 5 MΩ at 460 V (IEEE 43): lib/matching/spare-state.
    const low = motor({ id: 'M-8', spare: { insulationMohm: 0.1 } });
    const { sets, refused } = coverOf(new Map([['P-1', { set: set() }]]), [low], defaultSettings);
    expect(sets.get('P-1')?.serves).toEqual([]);
    expect(refused).toEqual([low]);
  });
});

const plant = somePlant({ seed: 5, sets: 40, spares: 50 });
const ids = [...plant.sets.keys()];
const someShelf = fc.subarray([...plant.shelf], { minLength: 1 });
const someSets = fc.subarray(ids, { minLength: 1 });
const only = (chosen: readonly string[]) => new Map(chosen.map((id) => [id, plant.sets.get(id) as { set: PumpSet }]));

test('a motor more on the shelf takes cover from no set', () => {
  fc.assert(
    fc.property(someShelf, fc.nat(), (shelf, at) => {
      const without = shelf.filter((_, i) => i !== at % shelf.length);
      const [more, less] = [
        told(coverOf(plant.sets, shelf, defaultSettings)),
        told(coverOf(plant.sets, without, defaultSettings)),
      ];
      for (const id of ids) expect(more.get(id)).toEqual(expect.arrayContaining(less.get(id) ?? []));
    }),
    { seed: 20261129, numRuns: 25 },
  );
});

test('brought up to date it is what it would be worked out anew, and what did not change is the same object', () => {
  const states = fc.array(fc.tuple(someSets, someShelf), { minLength: 2, maxLength: 4 });
  fc.assert(
    fc.property(states, (all) => {
      let cover: Cover | null = null;
      for (const [chosen, shelf] of all) {
        const before: Cover | null = cover;
        cover = coverOf(only(chosen), shelf, defaultSettings, before);
        expect(told(cover)).toEqual(told(coverOf(only(chosen), shelf, defaultSettings)));
        const again = coverOf(only(chosen), shelf, defaultSettings, cover);
        for (const [id, row] of cover.sets) expect(again.sets.get(id)).toBe(row);
      }
    }),
    { seed: 20261129, numRuns: 25 },
  );
});

test('other settings are judged by: what was kept under the old ones counts no more', () => {
  const settings = { ...defaultSettings, hours: { ...defaultSettings.hours, swap: 3 } };
  const before = coverOf(plant.sets, plant.shelf, defaultSettings);
  const after = told(coverOf(plant.sets, plant.shelf, settings, before));
  expect(after).toEqual(told(coverOf(plant.sets, plant.shelf, settings)));
  expect(after).not.toEqual(told(before));
});
