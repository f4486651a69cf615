import type { Mounting } from './mounting-code';

export type FrameSystem = 'NEMA' | 'IEC';
export type NemaFaceLetters = 'C' | 'CH' | 'D' | 'JM' | 'JP' | 'VP' | 'P' | 'PH' | 'HP' | 'HPH' | 'LP' | 'LPH';

export interface NemaFrameName {
  system: 'NEMA';
  /** Canonical: prefix letters and spaces gone, e.g. "184TC", "182/4T". */
  frame: string;
  /** One number, or the two of a base with both hole patterns. */
  numbers: readonly number[];
  /** small: 42, 48, 56; U: the 1952 series, also 182 to 215 without a letter; original: before 1952. */
  generation: 'small' | 'T' | 'U' | 'original';
  isShort: boolean;
  /** 48H, 56H. */
  hasLongBase: boolean;
  face: NemaFaceLetters | null;
  /** A face on the end away from the drive end: not what the pump bolts to. */
  farFace: 'F' | 'FC' | 'FD' | null;
  isJetPump: boolean;
  isTaper: boolean;
  isVertical: boolean;
  /** Y: the foot and face dimensions are not the standard's. */
  hasSpecialMounting: boolean;
  /** Z: the shaft is not the standard's. */
  hasSpecialShaft: boolean;
}

export interface IecFrameName {
  system: 'IEC';
  frame: string;
  height: number;
  /** Letters told; more than one is a base with the holes of each; none on a height that has no letter or was told none. */
  lengths: readonly ('S' | 'M' | 'L')[];
  /** The flange written beside the frame, e.g. "FF215". */
  flange: string | null;
  /** The shaft diameter written beside the frame, as in "112M 28 FF215". */
  shaftMm: number | null;
}

/** A flange alone, such as "FF165". */
export interface FlangeName {
  system: null;
  frame: string;
}

export interface FrameText {
  name: NemaFrameName | IecFrameName | FlangeName;
  /** Written in the same text, as in "100L-4 B35". */
  mounting: Mounting | null;
  poles: number | null;
}
