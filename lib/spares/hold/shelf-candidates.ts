import { kindsOf } from '@/lib/matching/screen/kinds';
import { spareState } from '@/lib/matching/spare-state';
import type { Motor } from '@/lib/plant/motor';
import type { HoldCandidate } from './candidate';

/**
 * The motors that are there, alike ones as one candidate: holding one of them or another covers the same. A motor below
 * the least insulation is none. `asOf`: the day as YYYY-MM-DD.
 */
export function shelfCandidates(motors: readonly Motor[], asOf: string): HoldCandidate[] {
  const offered = motors.filter((motor) => spareState(motor, asOf).refused === null);
  return kindsOf(offered).map(({ members }) => {
    // One that must be tested first costs hours that another of its kind may not.
    const [first, ...others] = [...members].sort(
      (a, b) => testsOf(a, asOf) - testsOf(b, asOf) || (a.id < b.id ? -1 : 1),
    ) as [Motor, ...Motor[]];
    return {
      from: 'shelf',
      motor: first,
      numbers: [first.id, ...others.map(({ id }) => id)],
      askedFor: [],
    };
  });
}

const testsOf = (motor: Motor, asOf: string) => (spareState(motor, asOf).test === null ? 0 : 1);
