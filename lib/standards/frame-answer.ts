import type { Reading } from '@/lib/plant/reading';
import { DIMENSION_NAMES, type Dimension, type DimensionName, type FaceKind } from './dimension';
import { type FrameOptions, readFrame } from './dimensions-of';
import type { FrameSystem } from './frame-text';

/** What the command, the API and the page of a frame answer. A flange alone has no dimensions. */
export interface FrameAnswer {
  frame: string;
  system: FrameSystem | null;
  dimensions: Partial<Record<DimensionName, Dimension>>;
  face: FaceAnswer | null;
}

export interface FaceAnswer {
  name: string;
  kind: FaceKind;
  pitchCircleMm: number | null;
  spigotMm: number | null;
  outsideMm: number | null;
  holes: number | null;
  hole: { throughMm: number } | { thread: string } | null;
  shoulderToFaceMm: number | null;
  optional: boolean;
  status: string;
  cite: string;
}

export function frameAnswer(frame: string, options: FrameOptions = {}): Reading<FrameAnswer> {
  const read = readFrame(frame, options);
  if (!read.ok) return read;
  const { dimensions, face, system, frame: name } = read.value;
  const isFlangeAlone = face !== null && name === face.name && system === 'IEC';
  const told = Object.fromEntries(DIMENSION_NAMES.map((one) => [one, dimensions[one]]));
  return { ok: true, value: { frame: name, system, dimensions: isFlangeAlone ? {} : told, face } };
}
