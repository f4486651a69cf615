import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, readEach, understood } from './reading-of-text';

/** A speed as stamped, and the poles where they stand beside it. */
export interface WrittenSpeed {
  rpm: number;
  poles: number | null;
}

/** "1,450", "1750 RPM", "1450 min-1", "1500 (4P)", "1450/1750": every speed stamped, in the order written. */
export function readSpeed(text: string): ReadingOfText<WrittenSpeed[]> {
  let bare = text.trim().replaceAll('⁻¹', '-1');
  const stamped = POLES.exec(bare);
  if (stamped) bare = bare.slice(0, stamped.index).trim();
  bare = bare.replace(UNIT, '').trim();
  if (bare === '') return notUnderstood(text, 'has no figure for the speed');
  const read = readEach(bare.split('/'), (part) => readNumber(part.replace(UNIT, ''), { min: 20, max: 24_000 }));
  if (!read.ok) return read;
  if (stamped && read.value.length > 1) return notUnderstood(text, 'gives one number of poles for several speeds');
  const poles = stamped ? Number(stamped[1]) : null;
  if (poles !== null && (poles < 2 || poles > 64 || poles % 2 !== 0))
    return notUnderstood(text, `${poles} is not a number of poles: it is even, 2 or more`);
  return understood(
    read.value.map((rpm) => ({ rpm, poles })),
    read.doubts,
  );
}

const POLES = /[\s(,]{0,3}\(?\s?(\d{1,2})\s?-?p(?:oles?|ol\.?)?\s?\)?$/i;
const UNIT = /\s?(?:r\.?p\.?m\.?|r\/min|rev\/min|min\^?-1|u\/min|tr\/min|1\/min|\/min)$/i;
