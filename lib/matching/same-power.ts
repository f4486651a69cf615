/** A kW plate rounds the horsepower it stands for (5 hp is 3.73 kW, stamped 3.7). */
const ROUNDED = 0.99;

/** Whether two rated powers count as equal in the trade, and stay so under the same derating. */
export const isSamePower = (kw: number, otherKw: number, deratedRatio: number, platedRatio: number): boolean =>
  kw / otherKw >= ROUNDED && deratedRatio >= platedRatio * (1 - 1e-9);
