/** Gathers things by a key as they come. */
export interface KindsByKey<T> {
  /** The number of its kind. */
  of: (thing: T) => number;
  /** The first of each kind, which stands for all. */
  ones: readonly T[];
}

export function kindsByKey<T extends object>(keyOf: (thing: T) => unknown): KindsByKey<T> {
  const byKey = new Map<unknown, number>();
  const ones: T[] = [];
  return {
    ones,
    of: (thing) => {
      const key = keyOf(thing);
      const known = byKey.get(key);
      if (known !== undefined) return known;
      byKey.set(key, ones.length);
      ones.push(thing);
      return ones.length - 1;
    },
  };
}
