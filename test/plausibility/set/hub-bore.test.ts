import { expect, test } from 'vitest';
import { hubBore } from '@/lib/plausibility/set/hub-bore';
import { set } from '../../matching/easy';
import { inSet } from '../in-set';

const of = (hub: object, ofMotor: Parameters<typeof inSet>[2] = {}, coupling: object = {}) =>
  inSet(hubBore, { coupling: { ...coupling, hub } }, ofMotor);

// NEMA MG 1 4.4.1: 184T has a shaft of 1-1/8 in, 28.575 mm.
test.each([
  ['as it is', { boreMm: 28.575 }, null],
  ['rounded', { boreMm: 28.6 }, null],
  ['28 mm is no 1-1/8 in', { boreMm: 28 }, 'wrong'],
  ['one inch', { boreMm: 25.4 }, 'wrong'],
  ['the other way round', { boreMm: 34.925 }, 'doubtful'],
  ['with a bushing', { boreMm: 34.925, bushed: true }, null],
  ['too small for a bushing even', { boreMm: 25.4, bushed: true }, 'wrong'],
])('%s', (_, hub, grade) => {
  expect(of(hub)?.grade ?? null).toBe(grade);
});

test('a shaft that was measured counts', () => {
  expect(of({ boreMm: 34.925 }, { measured: { shaftDiameterMm: 34.925 } })).toBeNull();
});

test('the difference is shown', () => {
  expect(of({ boreMm: 28 })).toMatchObject({
    field: 'coupling.hub.boreMm',
    expected: 28.575,
    unit: 'mm',
    says: 'Shaft 28.575 − bore 28 = 0.575 mm: the shaft of M-1 does not go in.',
  });
});

test.each([
  ['no bore', of({ lengthMm: 60 })],
  ['no shaft known', of({ boreMm: 10 }, { frame: null })],
  ['a quill', of({ boreMm: 10 }, {}, { input: 'quill' })],
  ['no motor', hubBore(set({ coupling: { hub: { boreMm: 10 } } }), null)],
])('is silent with %s', (_, doubt) => {
  expect(doubt).toBeNull();
});
