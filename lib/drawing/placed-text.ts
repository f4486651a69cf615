import type { Box, Detail, DimensionLine, Drawing, Label, Point } from './drawing';
import { ASCENT, DESCENT, textWidth } from './text-size';

/** A text where it stands, its line starting, centred or ending at `at`; an upright one is read from the right. */
export interface PlacedText {
  text: string;
  at: Point;
  anchor: Label['anchor'];
  tone: Label['tone'] | 'letter';
  isUpright: boolean;
}

/** The figures of a line: the candidate's above it, the failed motor's below; past its end where they do not fit. */
export function figuresAt(line: DimensionLine, textMm: number): PlacedText[] {
  const { direction, from, to, at, upper, lower, isBeside, tone } = line;
  const isUpright = direction === 'upright';
  const past = textMm * 0.6;
  const along = isUpright
    ? isBeside
      ? Math.min(from.y, to.y) - past
      : (from.y + to.y) / 2
    : isBeside
      ? Math.max(from.x, to.x) + past
      : (from.x + to.x) / 2;
  const figure = (text: string | null, toneOf: PlacedText['tone'], shift: number): PlacedText[] => {
    if (text === null) return [];
    const place = isUpright ? { x: at + shift, y: along } : { x: along, y: at + shift };
    return [{ text, at: place, anchor: isBeside ? 'start' : 'middle', tone: toneOf, isUpright }];
  };
  return [...figure(upper, tone, -textMm * 0.34), ...figure(lower, 'out', textMm * 1.02)];
}

/** Where the letter of a detail stands, at the end of its leader. */
export function letterAt({ letter, leader: { from, to } }: Detail, textMm: number): PlacedText {
  const at = {
    x: to.x + Math.sign(to.x - from.x) * textMm * 0.4,
    y: to.y + textMm * (to.y > from.y ? 0.8 : 0),
  };
  return { text: letter, at, anchor: 'middle', tone: 'letter', isUpright: false };
}

/** Every text of a view or a detail. */
export function textsOf(of: Pick<Drawing, 'dimensions' | 'labels' | 'textMm'> & { details?: readonly Detail[] }) {
  return [
    ...of.dimensions.flatMap((line) => figuresAt(line, of.textMm)),
    ...of.labels.map(({ text, at, anchor, tone }): PlacedText => ({ text, at, anchor, tone, isUpright: false })),
    ...(of.details ?? []).map((detail) => letterAt(detail, of.textMm)),
  ];
}

/** The room a placed text takes at most. */
export function boxOfText({ text, at, anchor, isUpright }: PlacedText, textMm: number): Box {
  const width = textWidth(text, textMm);
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
  const height = (ASCENT + DESCENT) * textMm;
  return isUpright
    ? { x: at.x - ASCENT * textMm, y: at.y + before - width, width: height, height: width }
    : { x: at.x - before, y: at.y - ASCENT * textMm, width, height };
}
