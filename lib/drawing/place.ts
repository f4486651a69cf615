import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';

/** Where the parts of one motor lie along its shaft; the pump is at the left. Null: not known, so not drawn. */
export interface Placed {
  shoulderX: number | null;
  shaftEndX: number | null;
  faceX: number | null;
  /** Nominal: ends of the barrel and of the fan cover; null without a size to take them from. */
  body: { frontX: number; backX: number; endX: number; radiusMm: number } | null;
}

// Nominal proportions of a body to its shaft height: common practice, no source. Only what a standard or a tape
// fixes carries a figure.
const BARREL_RADIUS = 0.9;
const BARREL_BEFORE_HOLES = 0.36;
const BARREL_BEHIND_SHOULDER = 0.29;
const HOLES_ALONG = 1.2;
const COVER = 0.6;
const RADIUS_OF_FACE = 0.42;

export function place(mount: Mount, together: MountFacts['together']): Placed {
  const offset = mount.face === null ? null : mount.face.shoulderToFaceMm;
  const shoulderX = together === 'holes' ? negated(mount.toShoulderMm) : offset;
  const byShoulder = shoulderX === null || mount.shaftLengthMm === null ? null : shoulderX - mount.shaftLengthMm;
  return {
    shoulderX,
    shaftEndX: together === 'holes' ? negated(mount.toShaftEndMm) : byShoulder,
    faceX: faceX(mount, together, shoulderX, offset),
    body: bodyOf(mount, together, shoulderX),
  };
}

function faceX(mount: Mount, together: MountFacts['together'], shoulderX: number | null, offset: number | null) {
  if (mount.face === null) return null;
  if (together === 'faces') return 0;
  return shoulderX === null || offset === null ? null : shoulderX - offset;
}

function bodyOf(mount: Mount, together: MountFacts['together'], shoulderX: number | null): Placed['body'] {
  const size = sizeOf(mount);
  if (size === null) return null;
  const along = mount.alongMm ?? HOLES_ALONG * size;
  const nearShoulder = (shoulderX ?? 0) + BARREL_BEHIND_SHOULDER * size;
  const frontX = together === 'holes' ? -BARREL_BEFORE_HOLES * size : nearShoulder;
  const backX = frontX + 2 * BARREL_BEFORE_HOLES * size + along;
  return { frontX, backX, endX: backX + COVER * size, radiusMm: BARREL_RADIUS * size };
}

/** What the nominal body is proportionate to: the shaft height, or for a motor without one its face. */
function sizeOf(mount: Mount): number | null {
  if (mount.heightMm !== null) return mount.heightMm;
  const outside = mount.face === null ? null : mount.face.outsideMm;
  return mount.feet === false && outside !== null ? (RADIUS_OF_FACE * outside) / BARREL_RADIUS : null;
}

const negated = (value: number | null) => (value === null ? null : -value);
