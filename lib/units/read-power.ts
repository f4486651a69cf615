import { kwOfMetricHp } from './power';
import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, readEach, understood } from './reading-of-text';

/** A power as stamped: in hp or in kW, never both. Metric horsepower (PS, CV, ch) comes out in kW. */
export type WrittenPower = { hp: number } | { kw: number };

/** "7½ HP", "5.5kW", "7,5 kW", "10 PS", "370 W", "4.8/5.5 kW": every power stamped, in the order written. */
export function readPower(text: string): ReadingOfText<WrittenPower[]> {
  const parts = /^(.{1,60}?)\s?(hp|h\.p\.?|horsepower|kw|kilowatts?|ps|cv|ch|w|watts?)?\.?$/i.exec(text.trim());
  if (!parts) return notUnderstood(text, 'is not a power: write it as 7.5 hp or 5.5 kW');
  const figures = parts[1] as string;
  const unit = parts[2]?.toLowerCase().replaceAll('.', '');
  if (unit === undefined) return notUnderstood(text, `could be ${figures} hp or ${figures} kW: write the unit`);
  return readEach(powersIn(figures), (part) => {
    const read = readNumber(part, BOUNDS[unit.startsWith('w') ? 'w' : 'other']);
    return read.ok ? understood(inUnit(read.value, unit), read.doubts) : read;
  });
}

const BOUNDS = { w: { min: 10, max: 100_000 }, other: { min: 0.01, max: 15_000 } };

/** "1/2" is one power, "4.8/5.5" two. */
const powersIn = (figures: string): string[] =>
  /^(?:\d{1,4}[ -])?[1-7]\s?\/\s?[23458]$/.test(figures.trim()) ? [figures] : figures.split('/');

function inUnit(value: number, unit: string): WrittenPower {
  if (unit.startsWith('h')) return { hp: value };
  if (unit.startsWith('k')) return { kw: value };
  if (unit.startsWith('w')) return { kw: value / 1_000 };
  return { kw: Math.round(kwOfMetricHp(value) * 1_000) / 1_000 };
}
