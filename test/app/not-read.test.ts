import { expect, test } from 'vitest';
import { coverAsked, setsAsked } from '@/app/lists/asked-for';
import { notRead } from '@/app/lists/not-read';

const of = (query: Record<string, string | string[]>) => {
  const { areaId, criticality, condition, volts, sort } = setsAsked(query);
  return notRead(query, { area: areaId, criticality, condition, volts, sort: { value: sort, words: 'by tag' } });
};

test.each([
  ['a sort that is not there', { sort: 'blah' }, { word: 'sort', typed: 'blah', shown: 'by tag' }],
  ['a criticality that is not there', { criticality: '9' }, { word: 'criticality', typed: '9', shown: 'any' }],
  ['an area that no address has', { area: 'packing' }, { word: 'area', typed: 'packing', shown: 'any' }],
  ['a state that is not there', { condition: 'broken' }, { word: 'state', typed: 'broken', shown: 'any' }],
  ['a voltage that is no figure', { volts: 'high' }, { word: 'voltage', typed: 'high', shown: 'any' }],
  ['the first of two', { sort: ['blah', 'tag'] }, { word: 'sort', typed: 'blah', shown: 'by tag' }],
] as const)('told with what is shown instead: %s', (_, query, told) => {
  expect(of(query as Record<string, string>)).toEqual([told]);
});

test.each([
  ['nothing asked', {}],
  ['all understood', { sort: 'area', criticality: '2', condition: 'failed', volts: '480' }],
  ['the sort it has anyway', { sort: 'tag' }],
  ['fields left empty', { sort: '', criticality: ' ', area: '' }],
  ['a figure written otherwise', { volts: '480.0', criticality: '2.0' }],
] as const)('nothing is told of what was read: %s', (_, query) => {
  expect(of(query)).toEqual([]);
});

test('what else was asked is not lost', () => {
  const query = { sort: 'blah', criticality: '2', state: 'nought' };
  expect(coverAsked(query)).toMatchObject({ criticality: 2, sort: 'criticality', state: null });
  expect(notRead(query, { criticality: 2, state: null }).map(({ word }) => word)).toEqual(['state']);
});
