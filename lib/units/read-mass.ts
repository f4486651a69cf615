import { kgOfPounds } from './mass';
import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, understood } from './reading-of-text';

/** "41 kg", "90 lb", "1.2 t", in kg. Without a unit it is a problem: kg or lb. */
export function readMass(text: string): ReadingOfText<number> {
  const parts = /^(.{1,24}?)\s?(kgs?|kilograms?|lbs?|pounds?|t)?\.?$/i.exec(text.trim());
  if (!parts) return notUnderstood(text, 'is not a mass: write it as 41 kg or 90 lb');
  const unit = parts[2]?.toLowerCase();
  const read = readNumber(parts[1] as string, { min: 0.05, max: 100_000 });
  if (!read.ok) return read;
  if (unit === undefined) return notUnderstood(text, `could be ${parts[1]} kg or ${parts[1]} lb: write the unit`);
  if (unit === 't') return understood(read.value * 1_000, read.doubts);
  if (unit.startsWith('k')) return read;
  return understood(Math.round(kgOfPounds(read.value) * 100) / 100, read.doubts);
}
