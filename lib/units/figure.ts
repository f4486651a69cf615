const SCALES = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000];
/** Beyond this a scaled value has no exact whole part any more. */
const GREATEST = 1e9;

/**
 * A figure as a sentence shows it: at most `digits` decimals, no trailing zeros, a true minus sign.
 * The value stays the caller's: nothing is judged on the rounded one.
 */
export function figure(value: number, digits = 2): string {
  const size = Math.abs(value);
  if (!(size < GREATEST)) return String(value).replace('-', '−');
  const scale = SCALES[digits] ?? 10 ** digits;
  // Sentences are written a million times a second: whole numbers are cheap to write, decimals are not.
  const scaled = Math.round(size * scale * HALF_UP);
  if (scaled === 0) return '0';
  const whole = Math.floor(scaled / scale);
  const rest = scaled - whole * scale;
  const text = rest === 0 ? `${whole}` : `${whole}.${decimals(rest, digits)}`;
  return value < 0 ? `−${text}` : text;
}

/** 1.005 is stored as 1.00499…: what a person typed as a half rounds up. */
const HALF_UP = 1 + Number.EPSILON;

function decimals(rest: number, digits: number): string {
  let left = rest;
  let places = digits;
  while (left % 10 === 0) {
    left /= 10;
    places -= 1;
  }
  return `${left}`.padStart(places, '0');
}
