import type { DemandOfSet } from '../demand';

/** What no one motor can be for all of them. */
export interface Contradiction {
  /** The line of the specification. */
  id: string;
  label: string;
  /** As which it is asked all the same: as most of the sets have it, of equals as the first. */
  askedAs: string;
  bySet: readonly DemandOfSet[];
}

/** What one set asks on the rating looked at. */
export interface Told<T> {
  tag: string;
  value: T | null;
}

/**
 * The value that all who tell one share. Where they do not, that of most, and the contradiction is noted; null where nobody
 * tells one.
 */
export function shared<T>(
  told: readonly Told<T>[],
  { id, label }: { id: string; label: string },
  text: (value: T) => string,
  noted: Contradiction[],
): T | null {
  const counts = new Map<string, { value: T; times: number }>();
  for (const { value } of told) {
    if (value === null) continue;
    const key = text(value);
    const known = counts.get(key);
    if (known === undefined) counts.set(key, { value, times: 1 });
    else known.times += 1;
  }
  // The order of the sets decides between equals: sorting keeps it.
  const [most] = [...counts].sort(([, a], [, b]) => b.times - a.times);
  if (most === undefined) return null;
  const [askedAs, { value }] = most;
  if (counts.size > 1) noted.push({ id, label, askedAs, bySet: told.map((one) => textOf(one, text)) });
  return value;
}

const textOf = <T>({ tag, value }: Told<T>, text: (value: T) => string): DemandOfSet => ({
  tag,
  value: value === null ? null : text(value),
});
