import type { Box, Point, Shape } from './drawing';

/** The narrowest column a view must be read in: a 360 px phone less its gutters. */
const COLUMN_PX = 328;
const TEXT_PX = 13.4;
/** Two details stand side by side. */
const DETAIL_PX = (COLUMN_PX - 16) / 2;

/** Under this many px a difference cannot be seen in a view and gets a detail. */
const SEEN_PX = 2;

/** Where nearly nothing is known, what is drawn can be a point: a view still has room for its text. */
const LEAST_MM = 10;

export interface ViewFrame {
  viewBox: Box;
  textMm: number;
  /** The greatest difference that cannot be seen here. */
  unseenMm: number;
}

/** Margins in heights of the text of a view. */
interface Sides {
  left: number;
  right: number;
}
interface Margin extends Sides {
  top: number;
  bottom: number;
}

/** The height of the text beside `content`, as large as the phone needs. */
export function textMmOf(content: Box, { left, right }: Sides): number {
  const share = TEXT_PX / COLUMN_PX;
  return (Math.max(content.width, LEAST_MM) * share) / (1 - share * (left + right));
}

/** A view box around `content`. */
export function frameView(content: Box, margin: Margin): ViewFrame {
  const textMm = textMmOf(content, margin);
  const width = (textMm * COLUMN_PX) / TEXT_PX;
  return {
    viewBox: {
      x: content.x - margin.left * textMm,
      y: content.y - margin.top * textMm,
      width,
      height: content.height + (margin.top + margin.bottom) * textMm,
    },
    textMm,
    unseenMm: (SEEN_PX * width) / COLUMN_PX,
  };
}

/** A square window on a detail, and the size of its text. */
export function frameDetail(centre: Point, widthMm: number): { viewBox: Box; textMm: number } {
  const half = widthMm / 2;
  return {
    viewBox: { x: centre.x - half, y: centre.y - half * 0.8, width: widthMm, height: widthMm * 0.8 },
    textMm: (widthMm * TEXT_PX) / DETAIL_PX,
  };
}

/** The smallest box around all shapes. */
export function boxOf(shapes: readonly Shape[]): Box {
  const points = shapes.flatMap(pointsOf);
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

function pointsOf(shape: Shape): Point[] {
  switch (shape.kind) {
    case 'polygon':
      return [...shape.points];
    case 'line':
      return [shape.from, shape.to];
    case 'circle': {
      const { centre, radiusMm: r } = shape;
      return [
        { x: centre.x - r, y: centre.y - r },
        { x: centre.x + r, y: centre.y + r },
      ];
    }
  }
}
