/** A line before work of which only so much may be done at once. */
export interface Line {
  /** Does it when its turn comes, those who came first before it; null: too many were waiting, and it was not done. */
  inLine: <T>(work: () => Promise<T>) => Promise<T | null>;
  /** How many are at work, and how many wait. */
  now: () => { working: number; waiting: number };
}

/** `atOnce` are at work at a time, `mostWaiting` wait, and whoever comes then is turned away. What throws gives its place on. */
export function lineOf(atOnce: number, mostWaiting: number): Line {
  const waiting: (() => void)[] = [];
  let working = 0;
  const place = (): Promise<void> => {
    if (working < atOnce) {
      working += 1;
      return Promise.resolve();
    }
    return new Promise((resolve) => waiting.push(resolve));
  };
  const giveOn = () => {
    const next = waiting.shift();
    if (next === undefined) working -= 1;
    else next(); // the place passes on as it is
  };
  return {
    now: () => ({ working, waiting: waiting.length }),
    inLine: async (work) => {
      if (working >= atOnce && waiting.length >= mostWaiting) return null;
      await place();
      try {
        return await work();
      } finally {
        giveOn();
      }
    },
  };
}
