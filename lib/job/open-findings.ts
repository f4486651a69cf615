import { type About, isRaised, type ReadingFinding } from './reading-finding';

/**
 * What stands open after several readings of one swap, oldest first: the last word on each thing counts, so that a
 * later reading within bounds clears an earlier one that was not. A later one that could not be judged clears nothing.
 */
export function openFindings(told: readonly (readonly ReadingFinding[])[]): ReadingFinding[] {
  const last = new Map<About, ReadingFinding>();
  for (const findings of told)
    for (const one of findings) if (one.need !== null || !last.has(one.about)) last.set(one.about, one);
  return [...last.values()].filter(isRaised);
}
