import type { Auxiliary } from '@/lib/plant/motor-words';
import { AUXILIARY_WORDS, auxiliariesInOrder } from '../fields/words';
import { normalHeading } from '../normal-heading';
import { type Cell, type CellReading, refused, told } from './cell';

/** "thermistor, heater", "PTC + brake"; "none" is a word that there are none. */
export function auxiliariesCell({ text }: Cell): CellReading<Auxiliary[]> {
  if (text.length > 400) return refused('is too long for a list of auxiliaries');
  if (['none', 'no', 'keine', 'aucun', 'ninguno'].includes(normalHeading(text))) return told([]);
  const found: Auxiliary[] = [];
  const unknown: string[] = [];
  for (const part of text.split(/[,;+&/\n]|\band\b/i)) {
    const word = normalHeading(part);
    if (word === '') continue;
    const one = BY_WORD.get(word);
    if (one) found.push(one);
    else unknown.push(part.trim());
  }
  if (unknown.length > 0)
    return refused(`"${unknown.join('", "').slice(0, 80)}" is none of ${Object.keys(AUXILIARY_WORDS).join(', ')}`);
  return found.length === 0 ? refused('names no auxiliary') : told(auxiliariesInOrder(found));
}

const BY_WORD = new Map<string, Auxiliary>(
  (Object.keys(AUXILIARY_WORDS) as Auxiliary[]).flatMap((one) =>
    [one, ...AUXILIARY_WORDS[one]].map((word): [string, Auxiliary] => [normalHeading(word), one]),
  ),
);
