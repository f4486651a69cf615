/** So long one piece of work may keep all others of this process waiting. */
const LONGEST_MS = 25;

/** To be awaited between pieces of long work: now and then it lets others have their turn. */
export function turns(): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < LONGEST_MS) return;
    await new Promise<void>((resolve) => setImmediate(resolve));
    since = performance.now();
  };
}
