import { expect, test } from 'vitest';
import { findInHand } from '@/lib/offline/find-in-hand';
import { packSet } from './in-hand';

const pump = { description: 'lobe pump, 3 in', kind: 'rotary', maker: null };
const sets = [
  packSet('CP-108', { service: 'Acid supply 3', area: 'Clean-in-place' }),
  packSet('CP-1080', { service: 'Rinse' }),
  packSet('SL-205', { service: 'Basil oil dosing', pump }),
  packSet('OR-101', { code: '4F7K2M9X' }),
];
const found = (typed: string) => findInHand(sets, typed).map(({ tag }) => tag);

test.each([
  ['the tag as it is written', 'CP-108', ['CP-108', 'CP-1080']],
  ['without its hyphen, small', 'cp108', ['CP-108', 'CP-1080']],
  ['with letters for figures', 'CP-1O8', ['CP-108', 'CP-1080']],
  ['5 for S and O for 0', '5L-2O5', ['SL-205']],
  ['its beginning', 'cp', ['CP-108', 'CP-1080']],
  ['words of service and area', 'acid clean', ['CP-108']],
  ['words of the pump', 'lobe', ['SL-205']],
  ['two figures changed over', 'SL-250', ['SL-205']],
  ['one figure too few', 'OR-11', ['OR-101']],
  ['a label code', '4F7K2M9X', ['OR-101']],
  ['nothing like any', 'ZZ-999-X', []],
  ['signs only', ' - ', []],
])('by %s', (_how, typed, tags) => {
  expect(found(typed)).toEqual(tags);
});

test('no answer is longer than a phone can show', () => {
  const many = Array.from({ length: 200 }, (_one, i) => packSet(`CP-${i}`));
  expect(findInHand(many, 'CP')).toHaveLength(25);
});
