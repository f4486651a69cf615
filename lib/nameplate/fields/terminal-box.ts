import { type PartReading, partOf, problemAt } from '../part-reading';

/** NEMA MG 1 Figure 4-6: F-1 box left, F-2 right, F-3 top, seen from the drive end; or the word itself. */
export function terminalBox(text: string): PartReading {
  const bare = text.trim().toUpperCase();
  const digit = /^F-?([123])\b/.exec(bare)?.[1];
  const side = SIDES.find(([code, word]) => code === digit || bare.startsWith(word));
  return side
    ? partOf({ terminalBox: side[2] })
    : problemAt('terminalBox', text, 'is not a side: F-1 left, F-2 right, F-3 top');
}

const SIDES = [
  ['1', 'LEFT', 'left'],
  ['2', 'RIGHT', 'right'],
  ['3', 'TOP', 'top'],
] as const;
