import fc from 'fast-check';
import { expect, test } from 'vitest';
import { setMarks, setNumbers } from '@/lib/spares/cover/set-marks';

test('the sets noted down are those asked about, however many there are', () => {
  const numbers = fc.array(fc.nat(9_000), { maxLength: 200 });
  fc.assert(
    fc.property(numbers, numbers, (noted, asked) => {
      const marks = setMarks();
      for (const one of noted) marks.add(one);
      for (const one of [...noted, ...asked]) expect(marks.has(one)).toBe(noted.includes(one));
    }),
    { seed: 20261129, numRuns: 200 },
  );
});

test('a set keeps its number, and no two share one', () => {
  const numbers = setNumbers();
  expect(['P-1', 'P-2', 'P-1', 'P-3', 'P-2'].map(numbers.of)).toEqual([0, 1, 0, 2, 1]);
  expect(numbers.count()).toBe(3);
});
