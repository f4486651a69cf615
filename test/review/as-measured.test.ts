import { expect, test } from 'vitest';
import { asMeasured, unevenPct } from '@/lib/review/as-measured';
import { NOTHING_KNOWN } from '@/lib/review/known';
import { reviewCase } from '@/lib/review/review-case';
import { reviewOf } from '@/lib/review/review-of';
import { inPlace, onDrive } from './in-place';

// NEMA MG 1 14.36 (read in two texts): greatest deviation from the average over the average. 450, 467 and 480 have the
// average 465.67; the greatest deviation is 15.67, 3.4 %.
test.each([
  ['three volts', [450, 467, 480], 3.4],
  ['even volts', [460, 460, 460], 0],
] as const)('%s', (_, volts, pct) => {
  expect(unevenPct(volts)).toBeCloseTo(pct, 1);
});

test('two volts tell nothing, nor does a drive’s output or a supply of one phase', () => {
  expect(unevenPct([450, 467, null])).toBeNull();
  const { set } = inPlace();
  expect(asMeasured(set, [450, 467, null])).toBe(set);
  const driven = inPlace(onDrive()).set;
  expect(asMeasured(driven, [450, 467, 480])).toBe(driven);
  const single = { ...set, supply: { ...set.supply, phases: 1 as const } };
  expect(asMeasured(single, [450, 467, 480])).toBe(single);
});

test('uneven volts that were measured derate, whatever was typed of the supply', () => {
  // 5 hp, 3.73 kW, at 3.4 % keeps about 0.89: 3.5 kW are too much then.
  const { set, by } = inPlace({ load: { shaftKw: 3.5 }, supply: { unbalancePct: 0.2 } });
  const rules = (of: typeof set) => {
    const asked = reviewCase(of, by, NOTHING_KNOWN);
    return asked === null ? [] : reviewOf(asked).map(({ rule }) => rule);
  };
  expect(rules(set)).not.toContain('derated');
  expect(rules(asMeasured(set, [450, 467, 480]))).toContain('derated');
});
