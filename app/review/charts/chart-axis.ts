/** px in the drawing. As wide as a phone's text it is shown as drawn. */
const FONT = 14;
const TEXT = { fill: 'currentColor', fontFamily: 'inherit', fontSize: FONT, stroke: 'none' };

/** Axes in ink, with the sheet's own figures. */
export const CHART_AXIS = {
  stroke: 'currentColor',
  tickStroke: 'currentColor',
  tickLabelProps: TEXT,
  labelProps: TEXT,
} as const;

/** px that a letter of the narrow face takes, and what parts two names. */
export const LETTER = 7;
const APART = 10;

/** Every how manieth name fits under columns that stand so many px apart. */
export const namesApart = (names: readonly string[], step: number): number =>
  Math.max(1, Math.ceil((LETTER * Math.max(0, ...names.map(({ length }) => length)) + APART) / step));

/** A chart is drawn twice, for a desk or paper and for a phone; the sheet shows one of them. */
export const CHART_SIZES = [
  { size: 'wide', width: 640 },
  { size: 'narrow', width: 328 },
] as const;
export type ChartSize = (typeof CHART_SIZES)[number];
