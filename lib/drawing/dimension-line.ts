import type { DimensionLine } from './drawing';
import { lengthText } from './length-text';
import type { MountFacts } from './mount-facts';
import { textWidth } from './text-size';

/** The two figures of a dimension, mm. `out` is undefined where only one motor is drawn. */
export interface TwoFigures {
  in: number | null;
  out: number | null | undefined;
}

/** A dimension as a view tells it; `isAsked` is false where the motors have none of it. */
export interface Figure extends TwoFigures {
  name: string;
  isAsked: boolean;
}

export function figuresOnLine(figures: TwoFigures, unit: MountFacts['unit']) {
  const lower = figures.out === undefined ? null : lengthText(figures.out, unit);
  return { upper: lengthText(figures.in, unit), lower, isUnknown: figures.in === null || figures.out === null };
}

/** The length a line is drawn to: the candidate's, else the failed motor's; null when neither is known. */
export const drawnLength = ({ in: candidate, out }: TwoFigures): number | null => candidate ?? out ?? null;

/** There is a length, and it is too small to be seen. */
export const isHidden = (mm: number, unseenMm: number): boolean => Math.abs(mm) > 0.005 && Math.abs(mm) < unseenMm;

/** Can the longer figure stand between the ends of the line? */
export function fitsOnLine(line: Pick<DimensionLine, 'upper' | 'lower'>, lengthMm: number, textMm: number): boolean {
  const widest = Math.max(...[line.upper, line.lower].map((text) => (text === null ? 0 : textWidth(text, textMm))));
  return lengthMm > widest + 0.7 * textMm;
}
