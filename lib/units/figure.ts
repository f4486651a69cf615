/**
 * A figure as a sentence shows it: at most `digits` decimals, no trailing zeros, a true minus sign.
 * The value stays the caller's: nothing is judged on the rounded one.
 */
export function figure(value: number, digits = 2): string {
  const fixed = value.toFixed(digits);
  const trimmed = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
  if (trimmed === '-0') return '0';
  return trimmed.startsWith('-') ? `−${trimmed.slice(1)}` : trimmed;
}
