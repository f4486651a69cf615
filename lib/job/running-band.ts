/**
 * How far above the prediction a running current may be: NEMA MG 1 12.47 lets the amps at rated load differ from the
 * plate's by 10 % (read in one text), and the prediction rests on the plate's.
 */
const ABOVE = 0.1;

/**
 * How far below: the prediction is of the greatest continuous duty, and most days ask for less. A current lower still
 * is a pump that does not pump, or a winding linked for another voltage. Common practice, no source.
 */
const BELOW = 0.25;

export const BAND_CITE =
  'plate amps hold within 10 %, NEMA MG 1 12.47 (read in one text); 25 % below the greatest duty: common practice, no source';

/** From where to where a running current is as predicted, A. */
export const runningBand = (amps: number): { fromA: number; toA: number } => ({
  fromA: amps * (1 - BELOW),
  toA: amps * (1 + ABOVE),
});
