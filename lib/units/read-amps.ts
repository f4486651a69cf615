import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, readEach } from './reading-of-text';

/**
 * "13.2/6.6 A", "20,9/12,1", "13.9-13.2/6.6": every current stamped, in A, in the order written. One current is a list
 * of one figure, or of the two of a range.
 */
export function readAmps(text: string): ReadingOfText<number[][]> {
  const bare = text.trim().replace(UNIT, '').trim();
  if (bare === '') return notUnderstood(text, 'has no figure for the current');
  return readEach(bare.split('/'), (part) =>
    readEach(part.split('-'), (figure) => readNumber(figure.trim().replace(UNIT, ''), BOUNDS)),
  );
}

const BOUNDS = { min: 0.01, max: 5_000 };
const UNIT = /\s?(?:amps?|amperes?|a)\.?$/i;
