/** A view as plain geometry: lengths in mm, x to the right, y down, the shaft axis at y = 0. */
export interface Point {
  x: number;
  y: number;
}

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/**
 * How a shape is drawn. `out` is the hatched ground of what goes out and `out-edge` its dashed outline; `in` is the
 * candidate. Where to act: `shim` is full, `new` hatched the other way in a full outline, `act-line` a thick line.
 */
export type Role =
  | 'base'
  | 'out'
  | 'out-edge'
  | 'in'
  | 'in-thin'
  | 'in-hair'
  | 'hole'
  | 'hub'
  | 'centre'
  | 'shim'
  | 'new'
  | 'act-line';

export type Part =
  | 'axis'
  | 'base'
  | 'block'
  | 'body'
  | 'bolt'
  | 'bushing'
  | 'face'
  | 'face-hole'
  | 'fin'
  | 'foot'
  | 'foot-hole'
  | 'hub'
  | 'key'
  | 'new-hole'
  | 'pitch-circle'
  | 'plate'
  | 'shaft'
  | 'shim'
  | 'shims-present'
  | 'slot'
  | 'spacer'
  | 'spigot'
  | 'terminal-box';

interface Drawn {
  role: Role;
  part: Part;
}
export interface Polygon extends Drawn {
  kind: 'polygon';
  points: readonly Point[];
}
export interface Line extends Drawn {
  kind: 'line';
  from: Point;
  to: Point;
}
export interface Circle extends Drawn {
  kind: 'circle';
  centre: Point;
  radiusMm: number;
}
/** Shapes stand in the order they are drawn in. */
export type Shape = Polygon | Line | Circle;

/**
 * A dimension line. `from` and `to` are where its extension lines start; `at` is the y of a level line, the x of an
 * upright one. `upper` is the candidate's figure, `lower` the failed motor's, null where it has none to show.
 */
export interface DimensionLine {
  name: string;
  direction: 'level' | 'upright';
  from: Point;
  to: Point;
  at: number;
  upper: string | null;
  lower: string | null;
  /** One of the two figures is not known: its text is a question mark. */
  isUnknown: boolean;
  /** The figures stand past the right or upper end of the line, where they do not fit between the ends. */
  isBeside: boolean;
  /** `act`: the line says where to act. */
  tone: 'in' | 'act';
}

/** A text at the end of a leader. `out` is faint, `act` blue. */
export interface Label {
  text: string;
  at: Point;
  anchor: 'start' | 'middle' | 'end';
  tone: 'in' | 'out' | 'act';
  leader: readonly Point[];
}

/** The same shapes through a smaller window: where the difference would be under 2 px in the view. */
export interface Detail {
  letter: string;
  caption: string;
  spot: { centre: Point; radiusMm: number };
  leader: { from: Point; to: Point };
  viewBox: Box;
  textMm: number;
  dimensions: readonly DimensionLine[];
  labels: readonly Label[];
  /** Figures that stand under the detail, where they would cross its lines. */
  figures: string | null;
  sentence: string;
}

export interface Drawing {
  caption: string;
  viewBox: Box;
  /** Height of the figures, so that they are 13 px on a 360 px phone. */
  textMm: number;
  shapes: readonly Shape[];
  dimensions: readonly DimensionLine[];
  labels: readonly Label[];
  details: readonly Detail[];
  /** What neither motor tells, and so is not drawn. */
  notDrawn: readonly string[];
  /** What the view shows, for those who cannot see it. */
  sentence: string;
}
