import { mmOfInches } from './length';
import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, understood } from './reading-of-text';

/** "28 mm", "1-1/8 in", "1 1/8\"", "0.875 in", "2.8 cm", in mm. Without a unit it is a problem: mm or inches. */
export function readLength(text: string): ReadingOfText<number> {
  const parts = /^(.{1,24}?)\s?(mm|cm|m|inches|inch|in\.?|"|″|”|''|millimet(?:er|re)s?)?$/i.exec(text.trim());
  if (!parts) return notUnderstood(text, 'is not a length: write it as 28 mm or 1-1/8 in');
  const unit = parts[2]?.toLowerCase();
  const read = readNumber(parts[1] as string, { min: 0.001, max: 100_000 });
  if (!read.ok) return read;
  if (unit === undefined) return notUnderstood(text, `could be ${parts[1]} mm or ${parts[1]} in: write the unit`);
  if (unit === 'm') return understood(read.value * 1_000, read.doubts);
  if (unit === 'cm') return understood(read.value * 10, read.doubts);
  if (unit.startsWith('m')) return read;
  return understood(mmOfInches(read.value), read.doubts);
}
