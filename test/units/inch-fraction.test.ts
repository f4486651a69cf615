import { expect, test } from 'vitest';
import { inchFraction } from '@/lib/units/inch-fraction';

// 1 in is 25.4 mm exactly.
test.each([
  [28.575, '1 1/8'],
  [22.225, '7/8'],
  [114.3, '4 1/2'],
  [177.8, '7'],
  [0.688 * 25.4, '11/16'],
  [1.5875, '1/16'],
  [3.38 * 25.4, '3.38'],
  [28, '1.102'],
])('%s mm is %s in', (mm, text) => {
  expect(inchFraction(mm)).toBe(text);
});
