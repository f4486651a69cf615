import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ALL_OPEN, asked, NO_AREA, type ReviewFilter } from '@/lib/review/list/review-filter';
import { anyRows, row } from './rows';

const rows = [
  row({ setId: '1', tag: 'P-101', finding: { rule: 'overloaded', urgency: 'at-once', says: 'Asked for 4.8 kW.' } }),
  row({ setId: '2', tag: 'P-102', areaId: null, area: null, criticality: null, isAccepted: true }),
  row({ setId: '3', tag: 'SK-7', service: 'Frothing tank', criticality: 4, motor: 'M-0077' }),
];
const tags = (filter: Partial<ReviewFilter>) =>
  asked(rows, { ...ALL_OPEN, state: 'all', ...filter }).map((one) => one.tag);

test.each<[string, Partial<ReviewFilter>, string[]]>([
  ['everything', {}, ['P-101', 'P-102', 'SK-7']],
  ['open ones', { state: 'open' }, ['P-101', 'SK-7']],
  ['accepted ones', { state: 'accepted' }, ['P-102']],
  ['a rule', { rule: 'overloaded' }, ['P-101']],
  ['an urgency', { urgency: 'next-time' }, ['P-102', 'SK-7']],
  ['an area', { areaId: 'area-1' }, ['P-101', 'SK-7']],
  ['no area', { areaId: NO_AREA }, ['P-102']],
  ['a criticality', { criticality: 4 }, ['SK-7']],
  ['a word of the service', { q: 'froth' }, ['SK-7']],
  ['a word of what it says', { q: '4.8' }, ['P-101']],
  ['a tag without its hyphen', { q: 'p101' }, ['P-101']],
  ['a motor', { q: 'm0077' }, ['SK-7']],
  ['all words, not one of them', { q: 'frothing P-101' }, []],
  ['blanks alone', { q: '  ' }, ['P-101', 'P-102', 'SK-7']],
  ['a sign that is in none', { q: '§' }, []],
])('asked for: %s', (_, filter, expected) => {
  expect(tags(filter)).toEqual(expected);
});

test('accepted and open are all, whatever else is asked', () => {
  fc.assert(
    fc.property(
      anyRows,
      fc.constantFrom(null, 1, 2),
      fc.constantFrom(null, 'a', NO_AREA),
      (of, criticality, areaId) => {
        const count = (state: ReviewFilter['state']) => asked(of, { ...ALL_OPEN, criticality, areaId, state }).length;
        expect(count('open') + count('accepted')).toBe(count('all'));
      },
    ),
  );
});
