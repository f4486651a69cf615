import { readNumber } from '@/lib/units/read-number';
import { type ReadingOfText, readEach, understood } from '@/lib/units/reading-of-text';

/** "0.82", ".82/.80", "82 %": power factors, of one. */
export function readPf(text: string): ReadingOfText<number[]> {
  return readEach(partsOf(text), (part) => {
    const read = readNumber(part, { min: 0.1, max: 100 });
    // No power factor is above one: a plate that says 82 means 82 per cent.
    return read.ok && read.value > 1 ? understood(read.value / 100, read.doubts) : read;
  });
}

/** "89.5", "89,5 %", "IE3-89.5%": efficiencies in per cent; the class letters are not kept. */
export function readEfficiency(text: string): ReadingOfText<number[]> {
  return readEach(partsOf(text.replaceAll(/IE\s?[1-5]\s?[-–( ]?\s?(?=\d)/gi, '')), (part) => {
    const read = readNumber(part, { min: 0.2, max: 100 });
    return read.ok && read.value <= 1 ? understood(Math.round(read.value * 1e4) / 100, read.doubts) : read;
  });
}

const partsOf = (text: string): string[] =>
  text
    .replaceAll('%', '')
    .split('/')
    .map((part) => part.trim());
