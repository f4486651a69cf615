import { expect, test } from 'vitest';
import { type ProvenOf, provenWords } from '@/app/hold/proven-words';
import type { LeastCover } from '@/lib/solver/least-cover';

const found = (more: Partial<LeastCover>): LeastCover => ({
  ...{ columns: [], cost: 12, tie: 3, costBound: 12, tieBound: 3, left: { rows: 0, columns: 0 }, seconds: 5 },
  ...{ greedy: { columns: [], cost: 14, tie: 3, mostTimes: 2 }, ended: 'done', says: null, ...more },
});
const words = (more: Partial<LeastCover>, of: Partial<ProvenOf> = {}) =>
  provenWords({ found: found(more), aim: 'fewest', seconds: 5, fixedCents: 0, currency: 'EUR', ...of }).join(' ');

test('a choice that is proven says so and nothing else', () => {
  expect(words({})).toBe('Proven: no choice takes less than 12 motors.');
  expect(words({ cost: 1, costBound: 1 })).toBe('Proven: no choice takes less than 1 motor.');
});

test('a limit reached says the bound, the gap and what part of the whole it is', () => {
  const said = words({ costBound: 9, tieBound: 0, ended: 'time' });
  expect(said).toContain('The limit of 5 s came before the proof.');
  expect(said).toContain('takes 12 motors, and none takes less than 9 motors: a gap of 3 motors, 25 %.');
});

test('in money the gap is of the whole cost, what swaps cost whatever is chosen among it', () => {
  const said = words(
    { cost: 15_000, costBound: 14_000, tieBound: 0, ended: 'time' },
    { aim: 'cheapest-with-work', fixedCents: 5_000, seconds: 20 },
  );
  expect(said).toContain('takes 200 EUR, and none takes less than 190 EUR: a gap of 10 EUR, 5 %.');
});

test('where only the second aim was not proven, the first is and the second says how far', () => {
  const said = words({ tieBound: 1, ended: 'time' });
  expect(said).toContain('Proven: no choice takes less than 12 motors.');
  expect(said).toContain('this one buys 3; proven is only that none buys fewer than 1.');
});

test('where the solver’s answer was not used, why stands there', () => {
  const said = words({ costBound: 9, tieBound: 0, ended: 'none', says: 'too many others were being solved' });
  expect(said).toContain('Not proven.');
  expect(said).toContain('the greedy choice stands: too many others were being solved.');
});
