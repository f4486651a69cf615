/** A seeded stream of numbers: the same seed makes the same plant (mulberry32). */
export interface Dice {
  /** From 0 up to, not including, 1. */
  next(): number;
  pick<T>(from: readonly T[]): T;
  between(low: number, high: number): number;
  chance(share: number): boolean;
}

export function dice(seed: number): Dice {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    pick: <T>(from: readonly T[]): T => {
      const chosen = from[Math.floor(next() * from.length)];
      if (chosen === undefined) throw new Error('nothing to pick from');
      return chosen;
    },
    between: (low, high) => low + (high - low) * next(),
    chance: (share) => next() < share,
  };
}
