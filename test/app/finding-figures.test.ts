import { expect, test } from 'vitest';
import { figuresOfFinding } from '@/app/look/finding-figures';

test('a speed range is one figure, and no unit stands by a difference of two', () => {
  expect(figuresOfFinding({ have: null, need: 4, difference: null, unit: ':1' })).toMatchObject({ need: '4:1' });
  expect(figuresOfFinding({ have: 3, need: 4, difference: -1, unit: ':1' })).toMatchObject({
    ...{ have: '3', need: '4', difference: '−1', hasUnit: false },
  });
});

test('a figure with nothing to differ from carries its unit', () => {
  expect(figuresOfFinding({ have: null, need: 114.3, difference: null, unit: 'mm' })).toMatchObject({
    ...{ have: '?', need: '114.3 mm', difference: '' },
  });
});
