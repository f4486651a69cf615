import { lengthText } from './length-text';
import type { MountFacts } from './mount-facts';

interface Told {
  name: string;
  in: number | null;
  out: number | null | undefined;
  isAsked: boolean;
}

/** A view in words: each dimension as the candidate has it and as the failed motor has it. */
export function sentenceOf(
  view: string,
  candidate: string,
  out: string | null,
  figures: readonly Told[],
  { together, unit }: MountFacts,
): string {
  const asked = figures.filter((figure) => figure.isAsked);
  const lined = together === 'holes' ? 'shafts in line, drive-end holes together' : 'shafts in line, faces together';
  const opening =
    out === null
      ? `${view} of ${candidate}, to scale.`
      : `${view}, to scale: ${candidate} goes in, ${out} goes out, ${lined}.`;
  const parts = asked.map((figure) => {
    const own = inWords(figure.in, unit);
    return figure.out === undefined
      ? `${figure.name} ${own}`
      : `${figure.name} ${own} in, ${inWords(figure.out, unit)} out`;
  });
  return parts.length === 0 ? opening : `${opening} ${capital(parts.join('; '))}.`;
}

export const inWords = (mm: number | null, unit: MountFacts['unit']) =>
  mm === null ? 'not known' : `${lengthText(mm, unit)} ${unit}`;

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
