import type { Figure } from './dimension-line';
import { lengthText } from './length-text';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';

/**
 * A view in words: each dimension as the candidate has it and as the failed motor has it, the difference between them, then
 * what else the view shows, a sentence each.
 */
export function sentenceOf(
  view: string,
  candidate: Mount,
  out: Mount | null,
  figures: readonly Figure[],
  { together, unit }: MountFacts,
  besides: readonly string[],
): string {
  const opening =
    out === null
      ? `${view} of ${candidate.name}, to scale.`
      : `${view}, to scale: ${candidate.name} goes in, ${out.name} goes out, ${LINED[together]}.`;
  const told = figures
    .filter((figure) => figure.isAsked)
    .map((figure) => `${figure.name} ${figureWords(figure, unit)}`);
  return [opening, ...(told.length === 0 ? [] : [`${capital(told.join('; '))}.`]), ...besides].join(' ');
}

const LINED = {
  holes: 'shafts in line, drive-end holes together',
  faces: 'shafts in line, faces together',
  'shaft-ends': 'shafts in line, shaft ends together',
} as const satisfies Record<MountFacts['together'], string>;

function figureWords({ in: own, out }: Figure, unit: MountFacts['unit']): string {
  if (out === undefined) return inWords(own, unit);
  if (own === null && out === null) return 'not known of either';
  if (own === null || out === null) return `${inWords(own, unit)} in, ${inWords(out, unit)} out`;
  if (lengthText(own, unit) === lengthText(out, unit)) return `${inWords(own, unit)} in and out`;
  return `${inWords(own, unit)} in, ${inWords(out, unit)} out, difference ${inWords(own - out, unit)}`;
}

export const inWords = (mm: number | null, unit: MountFacts['unit']) =>
  mm === null ? 'not known' : `${lengthText(mm, unit)} ${unit}`;

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
