import { expect, test } from 'vitest';
import { defaultSettings } from '@/lib/matching/default-settings';
import { buyCandidates } from '@/lib/spares/hold/buy-candidates';
import { buyCandidatesInTurns, servedInTurns } from '@/lib/spares/hold/in-turns';
import { servingOf } from '@/lib/spares/hold/served';
import { shelfCandidates } from '@/lib/spares/hold/shelf-candidates';
import { plant } from '../../../bench/plant';
import { promised } from '../../solver/promised';

const { sets, motors } = plant({ sets: 6, spares: 12 });
const judgedBy = { settings: defaultSettings, asOf: '2026-11-28' };

test('others have their turn behind every set whose ratings are worked out, and behind every candidate and set judged', async () => {
  let turns = 0;
  const turn = async () => {
    turns += 1;
  };
  const bought = await buyCandidatesInTurns(sets, turn);
  expect(turns).toBe(sets.length);
  const candidates = [...shelfCandidates(motors, judgedBy.asOf), ...bought];
  const served = await servedInTurns(sets, candidates, judgedBy, turn);
  expect(turns).toBe(2 * sets.length + candidates.length);
  // What comes of it is what comes of it at one go.
  expect(bought).toEqual(buyCandidates(sets));
  expect(served).toEqual(sets.map(servingOf(candidates, judgedBy)));
  expect(served.flat().length).toBeGreaterThan(0);
});

test('nothing is judged on while others have their turn', async () => {
  const candidates = buyCandidates(sets);
  const [others, read] = [promised<null>(), new Set<string>()];
  const watched = sets.map(
    (set) =>
      new Proxy(set, {
        get: (of, key, whole) => {
          read.add(of.tag);
          return Reflect.get(of, key, whole);
        },
      }),
  );
  let turns = 0;
  const done = servedInTurns(watched, candidates, judgedBy, async () => {
    turns += 1;
    if (turns === candidates.length + 1) await others.promise;
  });
  await new Promise<void>((resolve) => setImmediate(resolve));
  expect([...read]).toEqual([sets[0]?.tag]);
  others.keep(null);
  await done;
  expect([...read]).toEqual(sets.map(({ tag }) => tag));
});
