import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, readEach } from './reading-of-text';

/** "50", "60 Hz", "50/60 Hz", "60 CYC": every frequency stamped, in Hz, in the order written. */
export function readHertz(text: string): ReadingOfText<number[]> {
  const bare = text.replace(UNIT, '').trim();
  if (bare === '') return notUnderstood(text, 'has no figure for the frequency');
  return readEach(bare.split('/'), (part) => readNumber(part.replace(UNIT, ''), { min: 5, max: 400 }));
}

const UNIT = /(?:hz|hertz|cyc(?:les)?|cps|c\/s|~)\.?\s{0,9}$/i;
