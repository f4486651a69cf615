const TEXT = { fill: 'currentColor', fontFamily: 'inherit', fontSize: 13, stroke: 'none' };

/** Axes in ink, with the sheet's own figures. */
export const CHART_AXIS = {
  stroke: 'currentColor',
  tickStroke: 'currentColor',
  tickLabelProps: TEXT,
  labelProps: TEXT,
} as const;
