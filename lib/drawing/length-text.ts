import { figure } from '@/lib/units/figure';
import { inchesOfMm } from '@/lib/units/length';

/** A length as a dimension line shows it: hundredths of a mm or thousandths of an inch; unknown is a question mark. */
export function lengthText(mm: number | null, unit: 'mm' | 'in'): string {
  if (mm === null) return '?';
  return unit === 'mm' ? rounded(mm, 2) : rounded(inchesOfMm(mm), 3);
}

/** Halves go up as on paper: 28.575 is 28.58, whatever its binary form. */
function rounded(value: number, digits: number): string {
  const scale = 10 ** digits;
  return figure(Math.round(value * scale + Math.sign(value) * 1e-6) / scale, digits);
}
