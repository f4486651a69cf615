import type { Demand } from './demand';

/** Sets that wait for a motor at a random moment, in the mean, with so many held. */
export function waiting({ mean, atMost }: Demand, held: number): number {
  // E[(X − s)+]: each further spare takes off the chance that more than s are away.
  let sets = mean;
  for (let s = 0; s < held; s += 1) sets -= 1 - atMost(s);
  return Math.max(0, sets);
}

/** A year has 8760 hours, so that a set waiting all the time is 8760 h down. */
export const downHoursPerYear = (sets: number): number => sets * 8760;
