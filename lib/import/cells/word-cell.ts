import type { Words } from '../field';
import { normalHeading } from '../normal-heading';
import { type Cell, type CellReading, refused, told } from './cell';

/** One of a few words, however it is spelt; what does not decide between two is refused with the reason. */
export function wordCell({ text }: Cell, words: Words, vague: Readonly<Record<string, string>>): CellReading<string> {
  // A sign is lost among letters and digits: −1 is not 1.
  const own = /^[-+−]\s?\d/.test(text) ? text : simple(text);
  for (const [value, spellings] of Object.entries(words))
    if (simple(value) === own || spellings.some((spelling) => simple(spelling) === own)) return told(value);
  for (const [word, says] of Object.entries(vague)) if (simple(word) === own) return refused(says);
  return refused(`must be one of ${Object.keys(words).join(', ')}`);
}

/** Small letters and digits; where there are none ("Δ" has one) the text itself. */
const simple = (text: string): string => normalHeading(text.replaceAll(/[∆△]/g, 'δ')) || text.trim();

export function yesNoCell({ text }: Cell): CellReading<boolean> {
  const own = simple(text);
  if (YES.has(own)) return told(true);
  return NO.has(own) ? told(false) : refused('must be yes or no');
}

const YES = new Set(['yes', 'y', 'true', 'ja', 'oui', 'si', 'wahr', 'vrai', 'verdadero', '1', '✓', 'x']);
const NO = new Set(['no', 'n', 'false', 'nein', 'non', 'none', 'falsch', 'faux', 'falso', '0']);
