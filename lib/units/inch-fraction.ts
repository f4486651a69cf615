import { inchesOfMm } from './length';

/** Printed inches are rounded to a thousandth: 0.688 is 11/16. */
const ROUNDED = 0.0006;

/** "1 1/8", "4 1/2", "3.38": inches as a tape has them, as far as they are sixty-fourths. */
export function inchFraction(mm: number): string {
  const inches = inchesOfMm(mm);
  const parts = Math.round(inches * 64);
  if (Math.abs(inches - parts / 64) > ROUNDED) return String(Math.round(inches * 1_000) / 1_000);
  const [whole, rest] = [Math.floor(parts / 64), parts % 64];
  if (rest === 0) return String(whole);
  const by = [32, 16, 8, 4, 2].find((one) => rest % one === 0) ?? 1;
  return `${whole === 0 ? '' : `${whole} `}${rest / by}/${64 / by}`;
}
