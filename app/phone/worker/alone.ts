/** Does the work in one tab at a time. Where the browser has no locks (no https), there is nothing to hold. */
export const alone = (name: string, work: () => Promise<void>): Promise<void> =>
  navigator.locks === undefined ? work() : navigator.locks.request(name, work);
