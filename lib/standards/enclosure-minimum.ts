import { type EnclosureRow, enclosures } from './tables/enclosures';

/** What an enclosure word promises at least ("TEFC", "WP-II"); null for a word not known here. */
export function enclosureMinimum(word: string): EnclosureRow | null {
  return BY_WORD.get(word) ?? BY_WORD.get(word.toUpperCase().replace(/[\s.-]/g, '')) ?? null;
}

/** True where the word says the motor is explosion-proof: then a mark exists and can be read. */
export const saysExplosionProof = (word: string): boolean =>
  enclosureMinimum(word)?.long.startsWith('explosion-proof') === true;

const BY_WORD = new Map<string, EnclosureRow>(enclosures.rows.map((row) => [row.word, row]));
