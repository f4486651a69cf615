import type { DimensionLine } from './drawing';
import { lengthText } from './length-text';
import type { MountFacts } from './mount-facts';

/** The two figures of a dimension, mm. `out` is undefined where only one motor is drawn. */
export interface TwoFigures {
  in: number | null;
  out: number | null | undefined;
}

export function figuresOnLine(figures: TwoFigures, unit: MountFacts['unit']) {
  const lower = figures.out === undefined ? null : lengthText(figures.out, unit);
  return { upper: lengthText(figures.in, unit), lower, isUnknown: figures.in === null || figures.out === null };
}

/** The length a line is drawn to: the candidate's, else the failed motor's; null when neither is known. */
export const drawnLength = ({ in: candidate, out }: TwoFigures): number | null => candidate ?? out ?? null;

/** A length the two share no more than `unseenMm` of: it needs a detail. Unknown or equal needs none. */
export function needsDetail(figures: TwoFigures, unseenMm: number): boolean {
  if (figures.in === null || figures.out === null || figures.out === undefined) return false;
  const difference = Math.abs(figures.in - figures.out);
  return difference > 0.005 && difference < unseenMm;
}

/** Can the longer figure stand between the ends of the line? A figure is about half as wide as it is high. */
export function fitsOnLine(line: Pick<DimensionLine, 'upper' | 'lower'>, lengthMm: number, textMm: number): boolean {
  const letters = Math.max(...[line.upper, line.lower].map((text) => (text === null ? 0 : text.length)));
  return lengthMm > (letters * 0.52 + 0.7) * textMm;
}
