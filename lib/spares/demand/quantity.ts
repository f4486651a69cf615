import type { Demand } from './demand';

/** More are not asked for: a mean like that is no spare motor's. */
const MOST = 10_000;

/** The least number of spares with which the chance that no set waits at a random moment is at least `chance`, below 1. */
export function quantity({ atMost }: Demand, chance: number): number {
  if (!(chance >= 0 && chance < 1)) throw new RangeError(`a chance from 0 to below 1, not ${chance}`);
  for (let held = 0; held <= MOST; held += 1) if (atMost(held) >= chance) return held;
  throw new RangeError(`more than ${MOST} would be needed`);
}
