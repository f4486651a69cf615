import type { FrameFound } from '@/lib/standards/measured/frames-measured';
import { type StandardRating, standardRatings } from '@/lib/standards/standard-ratings';
import { polesOfSpeed, synchronousSpeed } from '@/lib/standards/synchronous-speed';
import { figure } from '@/lib/units/figure';
import { polesOf, type WalkAsked } from './walk-asked';

/**
 * What so many leads say of the winding. The connections are those of NEMA MG 1 Part 2 and IEC 60034-8; which leads are one
 * circuit on a nine-lead star is recalled, not read.
 */
export const LEADS_SAY: Readonly<Record<number, string>> = {
  3: 'Three leads: one voltage and one way to connect it. No star-delta start. Star or delta inside does not show.',
  6: 'Six leads: both ends of every winding, for star or delta, two voltages 1.73 apart, or a star-delta start. Marked 1, 2, 3 and 7, 8, 9 they are a part-winding motor.',
  9: 'Nine leads: two voltages, one twice the other; no star-delta start. Apart, three pairs and one group of three are a star inside; three groups of three a delta. A competent person tells by an ohmmeter.',
  12: 'Twelve leads: two voltages, one twice the other, each in star or delta; several ways to start it.',
};

/** What the speed says, with its sum, and whether the winding says the same. */
export function speedSays(asked: WalkAsked): string | null {
  const { rpm, hertz, polesFound } = asked;
  if (rpm === null || hertz === null) {
    if (polesFound !== null) return `${polesFound} poles by the winding.`;
    return rpm === null ? null : `${figure(rpm, 0)} rpm tell the poles once the hertz are known.`;
  }
  const poles = polesOfSpeed(rpm, hertz);
  if (poles === null)
    return `${figure(rpm, 0)} rpm is no speed under load of a motor at ${figure(hertz, 1)} Hz: is it fed by a drive, or measured behind a gear?`;
  const field = synchronousSpeed(poles, hertz);
  const sum = `${poles} poles by its speed: 120 × ${figure(hertz, 1)} / ${poles} = ${figure(field, 0)} rpm, and it turns ${figure(field - rpm, 0)} rpm slower under load.`;
  return polesFound === null || polesFound === poles
    ? sum
    : `${sum} By the winding it has ${polesFound}: one of the two is wrong, or it was fed by a drive.`;
}

/** The most that can have come out of the shaft: √3 × volts × amps, less what it lost. Three phases. */
export function ranSays({ volts, amps }: WalkAsked): string | null {
  if (volts === null || amps === null)
    return volts === null && amps === null ? null : 'Volts and amps together bound the power that came out.';
  const kva = (Math.sqrt(3) * volts * amps) / 1_000;
  return `√3 × ${figure(volts, 0)} V × ${figure(amps, 1)} A = ${figure(kva, 2)} kVA: with three phases less than ${figure(kva, 2)} kW came out of the shaft. How much less, power factor and efficiency tell, which nobody knows here.`;
}

/** Ratings that the standards assign to the frames left: what it may be for, and no proof that it is. */
export function usualRatings(fits: readonly FrameFound[], asked: WalkAsked): StandardRating[] {
  const poles = polesOf(asked);
  const frames = new Set(fits.map(({ option }) => option.frame.split(' ')[0]?.replace(/^(\d+TS?)[CD]H?$/, '$1')));
  const systems = [...new Set(fits.map(({ option }) => option.system))];
  return systems.flatMap((system) =>
    standardRatings(system).filter((one) => frames.has(one.frame) && (poles === null || one.poles === poles)),
  );
}
