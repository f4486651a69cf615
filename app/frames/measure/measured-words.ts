import type { Units } from '@/lib/fields/field';
import type { Measurable } from '@/lib/standards/measured/misfit';
import { figure } from '@/lib/units/figure';
import { inchesOfMm } from '@/lib/units/length';

export const MEASURED_WORDS: Readonly<Record<Measurable, { label: string; hint: string; most: number }>> = {
  shaftHeightMm: {
    label: 'Shaft height',
    hint: 'From what the feet stand on to the middle of the shaft: to its top, less half its diameter.',
    most: 1_000,
  },
  holesAcrossMm: { label: 'Holes across', hint: 'Middle to middle, square to the shaft.', most: 2_000 },
  holesAlongMm: {
    label: 'Holes along',
    hint: 'Middle to middle, along the shaft. With two pairs of holes, try each.',
    most: 2_000,
  },
  holeToShoulderMm: {
    label: 'Holes to shoulder',
    hint: 'From the middle of the front holes to the step where the shaft begins.',
    most: 1_000,
  },
  shaftDiameterMm: {
    label: 'Shaft diameter',
    hint: 'By a caliper where there is one: 28 mm and 1 1/8 in look alike.',
    most: 300,
  },
  shaftLengthMm: { label: 'Shaft length', hint: 'From the shoulder to the end.', most: 600 },
  keyWidthMm: { label: 'Key width', hint: 'Across the key or its seat.', most: 100 },
  pitchCircleMm: {
    label: 'Pitch circle',
    hint: 'From the middle of one face hole to the middle of the one across.',
    most: 2_000,
  },
  spigotMm: { label: 'Spigot', hint: 'Across the raised or sunk rim that centres the face.', most: 2_000 },
  faceDiameterMm: { label: 'Face diameter', hint: 'Over all.', most: 2_500 },
};

/** "113 mm", "4.449 in". */
export const lengthText = (mm: number, units: Units): string =>
  units === 'us' ? `${figure(inchesOfMm(mm), 3)} in` : `${figure(mm, 2)} mm`;

/** "+1.2 mm", "−0.57 mm": have − need. */
export const differenceText = (mm: number, units: Units): string =>
  `${mm > 0 ? '+' : mm < 0 ? '−' : '±'}${lengthText(Math.abs(mm), units)}`;

/** "Holes along, shaft diameter and key width". */
export function namesText(names: readonly Measurable[]): string {
  const words = names.map((name, i) =>
    i === 0 ? MEASURED_WORDS[name].label : MEASURED_WORDS[name].label.toLowerCase(),
  );
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
