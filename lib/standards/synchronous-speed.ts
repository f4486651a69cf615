/** Speed of the rotating field in rpm: n_s = 120 f / p. */
export const synchronousSpeed = (poles: number, hertz: number): number => (120 * hertz) / poles;

/**
 * The number of poles a plate speed belongs to: the even number at or next below 120 f / n, which is the slowest field
 * still at or above that speed. Null above the two-pole field, or where the slip would be more than any standard
 * design's 25 per cent: then the speed is no full-load speed of a mains motor at that frequency.
 */
export function polesOfSpeed(rpm: number, hertz: number): number | null {
  const poles = 2 * Math.floor((60 * hertz) / rpm + DUST);
  if (poles < 2) return null;
  return rpm < synchronousSpeed(poles, hertz) * (1 - GREATEST_SLIP) ? null : poles;
}

const DUST = 1e-9; // 3600 rpm at 60 Hz is two poles exactly
const GREATEST_SLIP = 0.25; // NEMA design D reaches 15 to 25 per cent: MG 10 Table 2-1 (read in one text)
