/**
 * The size of type at which a tag fits a width on one line. Widths are of the text face in bold, in ems, on the safe
 * side (test/browser/labels.spec.ts measures them).
 */
export function fittedMm(text: string, widthMm: number, largestMm: number): number {
  let ems = 0;
  for (const sign of text) ems += emsOf(sign);
  return Math.min(largestMm, Math.floor((widthMm / ems) * 100) / 100);
}

const CLASSES: readonly [RegExp, number][] = [
  [/^[MWmw@%&—]$/u, 1],
  [/^[ .,:;!|'’iIlj1·-]$/u, 0.45],
  [/^[\p{Lu}\p{Nd}]$/u, 0.74],
  [/^[\x20-\x7e]$/u, 0.66],
];
/** Signs of other scripts are as wide as they are high. */
const WIDEST = 1.1;

const emsOf = (sign: string): number => CLASSES.find(([kind]) => kind.test(sign))?.[1] ?? WIDEST;
