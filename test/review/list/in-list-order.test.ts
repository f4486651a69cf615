import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inListOrder } from '@/lib/review/list/in-list-order';
import { REVIEW_SORTS } from '@/lib/review/list/review-filter';
import { anyRows, cost, row } from './rows';

const rows = [
  row({ setId: '1', tag: 'P-9', loadPct: 12, finding: { urgency: 'next-time', cost: cost(900) } }),
  row({ setId: '2', tag: 'P-10', loadPct: 118, finding: { rule: 'overloaded', urgency: 'at-once' } }),
  row({ setId: '3', tag: 'P-2', loadPct: null, finding: { rule: 'start', urgency: 'plan' } }),
  row({ setId: '4', tag: 'P-30', loadPct: 30, finding: { urgency: 'next-time', cost: cost(1_200) } }),
];
const tags = (sort: (typeof REVIEW_SORTS)[number]) => inListOrder(rows, sort).map(({ tag }) => tag);

test.each([
  ['soonest, then dearest', 'urgency', ['P-10', 'P-2', 'P-30', 'P-9']],
  ['dearest; what has no price last, soonest first', 'money', ['P-30', 'P-9', 'P-10', 'P-2']],
  ['by tag, 9 before 10', 'tag', ['P-2', 'P-9', 'P-10', 'P-30']],
  ['most loaded, an unknown load last', 'load', ['P-10', 'P-30', 'P-9', 'P-2']],
] as const)('%s', (_, sort, expected) => {
  expect(tags(sort)).toEqual(expected);
});

test('the order never hangs on the order they came in, and none is lost', () => {
  fc.assert(
    fc.property(
      anyRows.chain((of) => fc.tuple(fc.constant(of), fc.shuffledSubarray(of, { minLength: of.length }))),
      fc.constantFrom(...REVIEW_SORTS),
      ([of, shuffled], sort) => {
        expect(inListOrder(shuffled, sort)).toEqual(inListOrder(of, sort));
        expect(new Set(inListOrder(of, sort))).toEqual(new Set(of));
      },
    ),
  );
});
