import { scryptSync } from 'node:crypto';

/** What `scryptSync` with its own settings takes on an idle machine of two cores, measured there: ms. */
const IDLE_MS = 45;

/**
 * How many times slower this machine is just now than that one: never below 1.
 * A limit that keeps out work without end is multiplied by it; how fast the work is, the bench tells.
 */
export function slowness(): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    scryptSync('a fixed piece of work', 'salt', 64);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return Math.max(1, (times[2] as number) / IDLE_MS);
}
