import type { Finding } from '@/lib/matching/finding';
import { signed } from './words';

export interface FigureTexts {
  have: string;
  need: string;
  difference: string;
  unit: string | null;
  /** The unit stands with the difference; without one there is none to show. */
  hasUnit: boolean;
  /** A value too long for its column: the three stand in a line of their own. */
  isLong: boolean;
}

type Compared = Pick<Finding, 'have' | 'need' | 'difference' | 'unit'>;

const COLUMN_LETTERS = 8;
/** Of a speed range, "4:1": part of the figure, and no unit of a difference. */
const RATIO = ':1';

/** Have, need and difference as a row shows them: the two figures with the same decimals, so that they align. */
export function figuresOfFinding({ have, need, difference, unit }: Compared): FigureTexts {
  const numbers = [have, need].filter((value) => typeof value === 'number');
  const digits = Math.max(0, ...numbers.map(decimalsOf));
  const beside = difference === null ? unit : null;
  const [haveText, needText] = [textOf(have, '?', digits, beside), textOf(need, '–', digits, beside)];
  return {
    have: haveText,
    need: needText,
    difference: differenceText(have, need, difference, digits),
    unit,
    hasUnit: difference !== null && Math.abs(difference) >= 1e-9 && unit !== null && unit !== RATIO,
    isLong: Math.max(haveText.length, needText.length) > COLUMN_LETTERS,
  };
}

/** As many decimals as the figure has, at most two, fewer where it is large. */
function decimalsOf(value: number): number {
  const most = Math.abs(value) >= 1000 ? 0 : Math.abs(value) >= 200 ? 1 : 2;
  const point = String(rounded(value, most)).split('.')[1];
  return point === undefined ? 0 : point.length;
}

/** Halves go up as on paper, whatever their binary form. */
function rounded(value: number, digits: number): number {
  const scale = 10 ** digits;
  return (Math.sign(value) * Math.round(Math.abs(value) * scale + 1e-6)) / scale;
}

/** A figure with nothing to differ from carries its unit itself. */
function textOf(value: Finding['have'], missing: string, digits: number, unit: string | null): string {
  if (value === null) return missing;
  if (typeof value === 'string') return value;
  const text = rounded(value, digits).toFixed(digits).replace('-', '−');
  if (unit === null) return text;
  return unit === RATIO ? `${text}${unit}` : `${text} ${unit}`;
}

function differenceText(have: Finding['have'], need: Finding['need'], difference: number | null, digits: number) {
  if (difference !== null)
    return Math.abs(difference) < 1e-9
      ? 'equal'
      : signed(rounded(difference, Math.max(digits, 2)), Math.max(digits, 2));
  return have !== null && have === need ? 'equal' : '';
}
