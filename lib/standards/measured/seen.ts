import type { FrameOption } from './frame-options';
import { figureOf, MEASURABLE, type Measurable, type Measured } from './misfit';

/** How the holes of its face are, or that it has no face. */
export type FaceSeen = 'none' | 'tapped' | 'through';

/** What is seen of its shaft end without measuring; null: nobody looked. */
export interface Seen {
  face: FaceSeen | null;
  /** Holes in the face. */
  holes: number | null;
}

/** The frames that what was seen leaves. */
export function suits(options: readonly FrameOption[], seen: Seen, measured: Measured): FrameOption[] {
  const isFaced = seen.holes !== null || ON_FACE.some((name) => measured[name] !== undefined);
  const face = seen.face === null && isFaced ? 'any' : seen.face;
  switch (face) {
    case 'none':
      return options.filter(({ fit }) => fit.face === null);
    case null:
      return withoutDoubles(options);
    default:
      return options.filter(({ fit: { face: own } }) => {
        if (own === null || (seen.holes !== null && own.holes !== null && own.holes !== seen.holes)) return false;
        return face === 'any' || (own.kind === 'D' || own.kind === 'FF') === (face === 'through');
      });
  }
}

export const ON_FACE: readonly Measurable[] = ['pitchCircleMm', 'spigotMm', 'faceDiameterMm'];
const ON_FEET_AND_SHAFT = MEASURABLE.filter((name) => !ON_FACE.includes(name));

/**
 * Where nobody looked for a face it may have one. A motor whose feet and shaft are those of the same frame without a face
 * is not named twice; a C-face motor whose feet stand elsewhere, and a pump shaft, are.
 */
function withoutDoubles(options: readonly FrameOption[]): FrameOption[] {
  const known = parted.get(options);
  if (known !== undefined) return known;
  const told = new Set<string>();
  const bare = options.filter(({ fit }) => fit.face === null);
  for (const option of bare) told.add(figuresOf(option));
  const left = [...bare, ...options.filter((option) => option.fit.face !== null && !told.has(figuresOf(option)))];
  parted.set(options, left);
  return left;
}

const parted = new WeakMap<readonly FrameOption[], FrameOption[]>();

function figuresOf(option: FrameOption): string {
  const figures = ON_FEET_AND_SHAFT.map((name) => figureOf(option, name)?.values.map((mm) => mm.toFixed(2)) ?? null);
  return JSON.stringify([option.system, figures]);
}
