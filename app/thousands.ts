import { figure } from '@/lib/units/figure';

/** Of so much and more the decimals tell nothing. */
const WHOLE_FROM = 1_000;

/** A sum as a table shows it: "12,345"; below a thousand with at most so many decimals. */
export function thousands(value: number, digits = 0): string {
  const size = Math.abs(value);
  if (size < WHOLE_FROM) return figure(value, digits);
  const whole = Math.round(size).toLocaleString('en-GB');
  return value < 0 ? `−${whole}` : whole;
}
