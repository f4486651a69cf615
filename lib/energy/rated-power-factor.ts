import type { RatingRow } from '@/lib/matching/context/rating-row';
import type { Motor } from '@/lib/plant/motor';
import { known, unknown, type WorkedOut } from './worked-out';

/** √3 for three phases, 1 for one; null: the phases are not known. */
export const phaseFactor = (phases: 1 | 3 | null): number | null =>
  phases === null ? null : phases === 1 ? 1 : Math.sqrt(3);

/** Full-load power factor, per unit: as printed, else from the plate's own amps, volts, power and efficiency. */
export function ratedPowerFactor({ phases }: Motor, { plate }: RatingRow, efficiency: WorkedOut): WorkedOut {
  if (plate === null) return unknown('No rating of this motor serves the supply.');
  if (plate.pf !== null) return known(plate.pf, 'the plate’s power factor');
  const { kw, amps, volts } = plate;
  const factor = phaseFactor(phases);
  if (kw === null || amps === null || volts === null || factor === null || efficiency.value === null)
    return unknown(
      'The plate prints no power factor, nor all of power, volts, amps, efficiency and phases to tell it by.',
    );
  const pf = (kw * 1_000) / (factor * volts * amps * (efficiency.value / 100));
  if (pf > 1) return unknown('The plate prints no power factor, and its amps are too few for its power.');
  return known(pf, `P = ${phases === 1 ? '' : '√3 '}V I pf η, from the plate’s power, volts, amps and efficiency`);
}
