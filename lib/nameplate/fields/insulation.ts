import type { PartReading } from '../part-reading';
import { problemAt } from '../part-reading';
import { letters } from './letters';

/** "F", "CLASS F", "155(F)", "155", "F/B" (built to F, rise of B). */
export function insulation(text: string): PartReading {
  const bare = text.toUpperCase().replace(/^(?:CLASS|CL\.?)\s*/, '');
  const degrees = /^\d{3}/.exec(bare)?.[0];
  const letter = /[A-Z]/.exec(bare)?.[0] ?? (degrees === undefined ? undefined : LETTER_OF[degrees]);
  if (letter === undefined) return problemAt('insulation', text, 'is not a thermal class such as B, F, H or 155');
  if (degrees !== undefined && LETTER_OF[degrees] !== letter)
    return problemAt('insulation', text, `names ${degrees} and ${letter}, which are two classes`);
  return letters('insulation', letter, text);
}

/** Thermal classes: IEC 60085 table 1 (from memory). */
const LETTER_OF: Record<string, string> = {
  '105': 'A',
  '120': 'E',
  '130': 'B',
  '155': 'F',
  '180': 'H',
  '200': 'N',
  '220': 'R',
};
