import { expect, test } from 'vitest';
import type { Choice } from '@/lib/spares/hold/choice';
import { heldOf } from '@/lib/spares/hold/held';
import type { Served } from '@/lib/spares/hold/served';

const serves = (candidate: number, verdict: Served['verdict'], hours: number): Served => ({
  ...{ candidate, verdict, hours },
  ...{ needsWork: verdict === 'swap-with-work', clearedBy: verdict === 'check-first' ? 'person' : 'nobody' },
});
const choice = (counted: Served[][]): Choice => ({
  ...{ programme: { rowCount: 0, columns: [] }, unservable: [], fixedCents: 0, counted },
  meanings: [0, 1, 2].map((candidate) => ({ kind: 'motor', candidate })),
});

test('each set goes with the chosen motor that suits it best: by verdict, then by hours', () => {
  const counted = [
    [serves(0, 'swap-with-work', 3), serves(1, 'straight-swap', 2)],
    [serves(0, 'swap-with-work', 3), serves(1, 'swap-with-work', 4)],
    [serves(1, 'check-first', 2), serves(2, 'straight-swap', 2)],
  ];
  expect(
    heldOf(choice(counted), [0, 1], 'fewest').map(({ candidate, sets }) => [candidate, sets.map(({ set }) => set)]),
  ).toEqual([
    [1, [0, 2]],
    [0, [1]],
  ]);
});

test('a choice that leaves a set without a motor is no answer, a set that nothing could serve is none of its matters', () => {
  expect(() =>
    heldOf(choice([[serves(0, 'straight-swap', 2)], [serves(2, 'straight-swap', 2)]]), [0], 'fewest'),
  ).toThrow('set 1');
  expect(heldOf(choice([[serves(0, 'straight-swap', 2)], []]), [0], 'fewest')).toHaveLength(1);
});

test('where work is paid for a set is told the quickest of the motors, which is the one that was reckoned with', () => {
  const counted = [[serves(0, 'straight-swap', 3), serves(1, 'check-first', 2)]];
  const told = (aim: 'cheapest' | 'cheapest-with-work') =>
    heldOf(choice(counted), [0, 1], aim)
      .filter(({ sets }) => sets.length > 0)
      .map(({ candidate }) => candidate);
  expect(told('cheapest')).toEqual([0]);
  expect(told('cheapest-with-work')).toEqual([1]);
});
