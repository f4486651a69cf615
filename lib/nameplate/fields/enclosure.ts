import { enclosureMinimum } from '@/lib/standards/enclosure-minimum';
import { type PartReading, problemAt } from '../part-reading';
import { letters } from './letters';

/** "TEFC", "ODP", or the IP code where the plate puts that under ENCL. */
export function enclosure(text: string): PartReading {
  const word = text.trim().toUpperCase();
  if (/^IP ?\d/.test(word)) return letters('ip', word.replaceAll(' ', ''), text);
  const known = enclosureMinimum(word);
  if (known) return letters('enclosure', known.word, text);
  return problemAt('enclosure', text, 'is not an enclosure known here, such as TEFC, TENV, TEBC, ODP or XP');
}
