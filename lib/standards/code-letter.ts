import type { Motor } from '@/lib/plant/motor';
import { citeOf } from './table';
import { codeLetters } from './tables/code-letters';

/** Locked-rotor kVA per hp. `to` is null for V, the open band. */
export interface CodeLetterBand {
  from: number;
  to: number | null;
  cite: string;
}

/** What a code letter promises of the current with locked rotor; null for a letter the table does not print. */
export const codeLetter = (letter: NonNullable<Motor['codeLetter']>): CodeLetterBand | null =>
  BANDS.get(letter) ?? null;

const BANDS: ReadonlyMap<string, CodeLetterBand> = new Map(
  codeLetters.rows.map(({ letter, from, to }) => [
    letter,
    { from: from[0], to: to === null ? null : to[0], cite: citeOf(codeLetters.source.clause, from[1]) },
  ]),
);
