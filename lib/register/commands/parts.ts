/** A list that long is written by several statements, each well under the 32,767 values one may carry. */
const ROWS = 500;

/** The longest that a command on many rows may take, ms. */
export const MOST_AT_ONCE = 120_000;

export function* parts<T>(list: readonly T[]): Generator<readonly T[]> {
  for (let i = 0; i < list.length; i += ROWS) yield list.slice(i, i + ROWS);
}
