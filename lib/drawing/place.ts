import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';

/** Where the parts of one motor lie along its shaft; the pump is at the left. Null: not known, so not drawn. */
export interface Placed {
  /** The drive-end foot holes; 0 where no feet are looked at. */
  holesX: number;
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

/** `holesX`: where its drive-end holes lie. */
export function place(mount: Mount, together: MountFacts['together'], holesX: number): Placed {
  const isByFaces = together === 'faces';
  const offset = mount.face === null ? null : mount.face.shoulderToFaceMm;
  const shoulderX = isByFaces ? offset : before(holesX, mount.toShoulderMm);
  const byShoulder = shoulderX === null || mount.shaftLengthMm === null ? null : shoulderX - mount.shaftLengthMm;
  return {
    holesX,
    shoulderX,
    shaftEndX: isByFaces ? byShoulder : before(holesX, mount.toShaftEndMm),
    faceX: faceX(mount, isByFaces, shoulderX, offset),
    body: bodyOf(mount, isByFaces, shoulderX, holesX),
  };
}

/**
 * How far the candidate's drive-end holes lie behind the failed motor's, mm; negative: nearer the pump. Only where the
 * work brings the shaft ends together, and both are known.
 */
export function slideOf(candidate: Mount, out: Mount | null, { together }: Pick<MountFacts, 'together'>): number {
  if (out === null || together !== 'shaft-ends') return 0;
  const [own, old] = [candidate.toShaftEndMm, out.toShaftEndMm];
  return own === null || old === null ? 0 : own - old;
}

function faceX(mount: Mount, isByFaces: boolean, shoulderX: number | null, offset: number | null) {
  if (mount.face === null) return null;
  if (isByFaces) return 0;
  return shoulderX === null || offset === null ? null : shoulderX - offset;
}

function bodyOf(mount: Mount, isByFaces: boolean, shoulderX: number | null, holesX: number): Placed['body'] {
  const size = sizeOf(mount);
  if (size === null) return null;
  const along = mount.alongMm ?? HOLES_ALONG * size;
  const nearShoulder = (shoulderX ?? 0) + BARREL_BEHIND_SHOULDER * size;
  const frontX = isByFaces ? nearShoulder : holesX - BARREL_BEFORE_HOLES * size;
  const backX = frontX + 2 * BARREL_BEFORE_HOLES * size + along;
  return { frontX, backX, endX: backX + COVER * size, radiusMm: BARREL_RADIUS * size };
}

/** What the nominal body is proportionate to: the shaft height, or for a motor without one its face. */
function sizeOf(mount: Mount): number | null {
  if (mount.heightMm !== null) return mount.heightMm;
  const outside = mount.face === null ? null : mount.face.outsideMm;
  return mount.feet === false && outside !== null ? (RADIUS_OF_FACE * outside) / BARREL_RADIUS : null;
}

const before = (x: number, mm: number | null) => (mm === null ? null : x - mm);
