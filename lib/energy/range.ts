import type { WorkedOut } from './worked-out';

/** From where to where a figure lies, with what it rests on; both ends are equal where it is one figure. Or null and why. */
export type Range = { low: number; high: number; from: string } | { low: null; high: null; why: string };

export const between = (low: number, high: number, from: string): Range => ({ low, high, from });
export const noRange = (why: string): Range => ({ low: null, high: null, why });

/** One figure as a range of itself. */
export const rangeOf = (figure: WorkedOut): Range =>
  figure.value === null ? noRange(figure.why) : between(figure.value, figure.value, figure.from);

/** The two ends of a figure that was worked out for both; the first that is not known says why. */
export function rangeOfBoth(one: WorkedOut, other: WorkedOut, from: string): Range {
  if (one.value === null) return noRange(one.why);
  if (other.value === null) return noRange(other.why);
  return between(Math.min(one.value, other.value), Math.max(one.value, other.value), from);
}
