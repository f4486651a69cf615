/** How a printed figure is known: read in two texts that agree, in one, or recalled and unverified. */
export type Status = 'published-2' | 'published' | 'memory';

/**
 * One length in mm. It may lie from value − minus to value + plus; null where no tolerance is set. `minus` is negative
 * where even the lower limit lies above nominal (ISO k6, m6).
 * `alternatives` are further values the same motor also offers (a second hole pattern).
 * Origin `measured` comes from a person's tape, `standard` from the frame, `unknown` has a null value.
 */
export interface Dimension {
  value: number | null;
  plus: number | null;
  minus: number | null;
  alternatives: readonly number[];
  origin: 'measured' | 'standard' | 'unknown';
  status: Status | null;
  cite: string | null;
}

export const DIMENSION_NAMES = [
  'shaftHeightMm',
  'holesAcrossMm',
  'holesAlongMm',
  'footHoleMm',
  'holeToShoulderMm',
  'shaftDiameterMm',
  'shaftLengthMm',
  'keyWidthMm',
] as const;
export type DimensionName = (typeof DIMENSION_NAMES)[number];

/** `C`, `CH`, `D`, `P`: NEMA; `FF` free holes, `FT` tapped holes: IEC; `JM`, `JP`: NEMA close-coupled pump faces. */
export type FaceKind = 'C' | 'CH' | 'D' | 'P' | 'FF' | 'FT' | 'JM' | 'JP';

export interface Face {
  name: string;
  kind: FaceKind;
  pitchCircleMm: number | null;
  spigotMm: number | null;
  outsideMm: number | null;
  holes: number | null;
  hole: { throughMm: number } | { thread: string } | null;
  /** Shaft shoulder to the face, + toward the shaft end; null unknown. */
  shoulderToFaceMm: number | null;
  /** True where the standard does not fix this flange on this frame (the larger optional FT). */
  optional: boolean;
  status: Status;
  cite: string;
}

/** `short`: S after T or U. The pump shafts are interchangeable only with their own type and size. */
export type ShaftKind = 'plain' | 'short' | 'JM' | 'JP' | 'J' | 'hollow' | 'solid-vertical' | 'taper' | 'special';

/** How a motor may be held: from the IM code, or from the frame's suffixes. Null is not known. */
export interface Holding {
  feet: boolean | null;
  face: boolean | null;
  /** The position it was built for; null where neither code nor suffix says. */
  shaft: 'horizontal' | 'down' | 'up' | null;
  /** Positions it may also take without a check: e.g. a universal IM B3 (IM 1001) motor does not include vertical. */
  positions: readonly ('horizontal' | 'down' | 'up' | 'wall' | 'ceiling')[];
}

/** The mounting of one frame: what the standard fixes, with what suffixes void set to unknown. */
export interface FrameDimensions {
  /** Canonical designation, e.g. "184TC", "100L". */
  frame: string;
  system: 'NEMA' | 'IEC' | null;
  dimensions: Readonly<Record<DimensionName, Dimension>>;
  face: Face | null;
  holding: Holding;
  shaft: ShaftKind;
  /** ISO class of the shaft end ("j6", "k6", "m6") or null (NEMA: see plus and minus). */
  shaftFit: string | null;
}
