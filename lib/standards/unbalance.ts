export type Three = readonly [number, number, number];

/** Up to this a motor's currents are taken as even: the stricter of two printed limits, a pump maker's manual. */
export const EVEN_UP_TO_PCT = 5;
/** Above this the supply is put right or the motor derated: a trade journal and an instrument's manual (two texts). */
export const UNEVEN_ABOVE_PCT = 10;

export const UNBALANCE_CITE =
  'greatest deviation from the mean over the mean, as NEMA MG 1 14.36 has it for volts; 10 %: common practice (read in two texts)';

/** The three; null where one was not read. */
export const allThree = ([a, b, c]: readonly [number | null, number | null, number | null]): Three | null =>
  a === null || b === null || c === null ? null : [a, b, c];

/** The greatest deviation of three from their mean, in per cent of the mean; null where nothing flows. */
export function unbalancePct(three: Three): number | null {
  const mean = meanOf(three);
  if (mean === 0) return null;
  return (100 * Math.max(...three.map((one) => Math.abs(one - mean)))) / mean;
}

export const meanOf = ([a, b, c]: Three): number => (a + b + c) / 3;
